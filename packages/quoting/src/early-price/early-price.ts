import { CostingInputError, LeafReader, type Price, price } from '@scantling/costing';
import {
  commonPractice,
  complement,
  difference,
  entered,
  type Figure,
  greatest,
  increment,
  least,
  named,
  sum,
} from '@scantling/figures';
import { type EarlyCost, meanOf, scaledAll } from './early-cost.ts';
import {
  DEFAULT_BAND,
  defaultScaling,
  EARLY_PRICE_CLASSES,
  type EarlyPriceClass,
  type EarlyPriceInput,
} from './early-price-input.ts';
import { Measures } from './scale-factor.ts';
import { type Asked, type ScaledPiece, scaledPiece } from './scaled-piece.ts';

/** One end of the range, or its middle, for one piece. */
export interface Estimate {
  readonly price: Figure<'money'>;
  readonly cost: Figure<'money'>;
  readonly hours: Figure<'h'>;
}

/**
 * A range before a bill of materials exists. It has no net price, margin or floor price of its own, so that it
 * cannot stand in for the price of a cost sheet.
 */
export interface EarlyPrice {
  readonly standing: 'before-bill-of-materials';
  /** What the range comes from: the least and greatest of the past pieces, or a stated band around one. */
  readonly spread: 'past-pieces' | 'band';
  readonly pieces: readonly { readonly scaled: ScaledPiece; readonly price: Figure<'money'> }[];
  readonly low: Estimate;
  readonly likely: Estimate;
  readonly high: Estimate;
}

const MOST_PIECES = 8;

/**
 * Low, likely and high price and hours of a piece nobody has drawn yet, scaled from past pieces. The likely price
 * rests on the mean of their costs.
 * @throws CostingInputError naming the field of the input and the mend; CurrencyMismatchError
 */
export function earlyPrice(input: EarlyPriceInput): EarlyPrice {
  checkInput(input);
  const asked = readAsked(input);
  const pieces = input.pieces.map((piece, index) => {
    const scaled = scaledPiece(piece, index, asked);
    return { scaled, price: priceOf(`early price from ${piece.name}`, scaled, input) };
  });
  const [first, ...more] = pieces;
  if (first === undefined) throw new RangeError('checkInput asks for at least one piece');
  if (more.length === 0)
    return { standing: 'before-bill-of-materials', spread: 'band', pieces, ...byBand(first.scaled, input) };
  const likely = meanOf(pieces.map(({ scaled }) => scaled));
  const prices = more.map((one) => one.price);
  const costs = more.map(({ scaled }) => scaled.cost);
  const hours = more.map(({ scaled }) => scaled.hours);
  return {
    standing: 'before-bill-of-materials',
    spread: 'past-pieces',
    pieces,
    low: {
      price: least('early price, low', first.price, ...prices),
      cost: least('cost, low', first.scaled.cost, ...costs),
      hours: least('hours, low', first.scaled.hours, ...hours),
    },
    likely: estimate('likely', likely, input),
    high: {
      price: greatest('early price, high', first.price, ...prices),
      cost: greatest('cost, high', first.scaled.cost, ...costs),
      hours: greatest('hours, high', first.scaled.hours, ...hours),
    },
  };
}

function checkInput({ pieces, adjustment, terms }: EarlyPriceInput): void {
  if (pieces.length === 0 || pieces.length > MOST_PIECES)
    throw new CostingInputError(
      'pieces',
      `cannot be ${pieces.length} past pieces`,
      `choose 1 to ${MOST_PIECES} pieces that were costed`,
    );
  pieces.forEach(({ id }, index) => {
    if (pieces.findIndex((other) => other.id === id) !== index)
      throw new CostingInputError(`pieces.${index}.id`, 'is there twice', 'choose each past piece once');
  });
  if (adjustment !== undefined && adjustment.reason.trim() === '')
    throw new CostingInputError('adjustment.reason', 'is missing', 'say why cost and hours differ');
  if (terms.policy.kind === 'entered')
    throw new CostingInputError(
      'terms.policy.kind',
      'cannot be "entered"',
      'an early price follows from past pieces: choose a markup, a margin or earnings an hour',
    );
}

function readAsked(input: EarlyPriceInput): Asked {
  const leaves = (path: string, subject: string) =>
    new LeafReader({
      keyPrefix: `early-price/${path}`,
      currency: input.currency,
      source: entered('entered for this early price'),
      subject,
      path,
    });
  const reader = leaves('asked', 'asked for');
  const { hours } = input.asked;
  const defaults = defaultScaling(hours !== undefined);
  const scaling = { ...defaults, ...input.scaling };
  const exponentOf = (name: EarlyPriceClass) =>
    leaves(`scaling.${name}`, name).read('exponent', scaling[name].exponent, {
      label: 'exponent of scale',
      unit: 'ratio',
      from: 0,
      to: 3,
      ...(input.scaling?.[name] === undefined
        ? { source: commonPractice('how this class grows where the workshop says nothing else') }
        : {}),
    });
  return {
    input,
    measures: new Measures('asked for', input.asked, reader),
    hours: hours === undefined ? null : reader.read('hours', hours, { label: 'hours', unit: 'h', above: 0 }),
    scaling,
    exponents: Object.fromEntries(
      EARLY_PRICE_CLASSES.map((name) => [name, exponentOf(name)]),
    ) as Asked['exponents'],
    adjustment: leaves('adjustment', '').read('factor', input.adjustment?.factor ?? 1, {
      label: 'own adjustment',
      unit: 'ratio',
      above: 0,
      to: 10,
      source: entered(input.adjustment?.reason.trim() ?? 'none made'),
    }),
  };
}

/** Around one piece: everything it costs, less and more by the shares of the band. */
function byBand(piece: ScaledPiece, input: EarlyPriceInput) {
  const reader = new LeafReader({
    keyPrefix: 'early-price/band',
    currency: input.currency,
    source:
      input.band === undefined
        ? commonPractice('band around one past piece')
        : entered('band stated by the workshop'),
    subject: '',
    path: 'band',
  });
  const { below, above } = input.band ?? DEFAULT_BAND;
  const down = reader.read('below', below, {
    label: 'below the likely cost',
    unit: 'ratio',
    from: 0,
    to: 0.95,
  });
  const up = reader.read('above', above, { label: 'above the likely cost', unit: 'ratio', from: 0, to: 5 });
  return {
    low: estimate('low', scaledAll(piece, complement('1 - below', down)), input),
    likely: estimate('likely', piece, input),
    high: estimate('high', scaledAll(piece, increment('1 + above', up)), input),
  };
}

function estimate(which: 'low' | 'likely' | 'high', cost: EarlyCost, input: EarlyPriceInput): Estimate {
  return {
    price: priceOf(`early price, ${which}`, cost, input),
    cost: named(`cost, ${which}`, cost.cost),
    hours: named(`hours, ${which}`, cost.hours),
  };
}

/** The price by the policy of cost sheets, under a label that says what it is. */
function priceOf(label: string, cost: EarlyCost, { terms, currency }: EarlyPriceInput): Figure<'money'> {
  const { classes, ownerLabour, ownerHours } = cost;
  const materials = sum('materials, hardware and bought-in', 'money', [classes.materials, classes.boughtIn]);
  const worked: Price = price(
    {
      costOfProduction: cost.cost,
      materials,
      labour: classes.labour,
      machines: classes.machines,
      ownerLabour,
      ownerHours,
      avoidable: sum("without the owner's labour", 'money', [
        materials,
        difference("labour but the owner's", classes.labour, ownerLabour),
      ]),
    },
    terms,
    { currency, source: entered('terms of this early price') },
  );
  return named(label, worked.netPrice, 'before a bill of materials: a range, not an offer');
}
