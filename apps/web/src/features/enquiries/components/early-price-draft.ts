import { CostingInputError, type PricePolicy } from '@scantling/costing';
import { decimal, sumOf } from '@scantling/decimals';
import {
  DEFAULT_BAND,
  defaultScaling,
  EARLY_PRICE_CLASSES,
  type EarlyPriceClass,
  type EarlyPriceInput,
  type PastPiece,
  type ScaleBasis,
  type Scaling,
} from '@scantling/quoting';
import { formatLength, type LengthSystem, parseLength, UnreadableLengthError } from '@scantling/units';
import { fromPercent, plainDecimal, toPercent } from '../../../lib/percent.ts';
import type { PastPieceAnswer } from '../api/past-pieces.ts';

export const SIDES = ['length', 'width', 'height'] as const;
type Side = (typeof SIDES)[number];

interface RuleDraft {
  readonly basis: ScaleBasis;
  readonly exponent: string;
}

/** An early price as it is typed: every number as text, shares as percentages. */
export interface EarlyPriceDraft extends Readonly<Record<Side, string>> {
  /** Empty: hours are scaled too. */
  readonly hours: string;
  /** Of what is counted, in the piece asked for and in each past piece by its id. */
  readonly count: string;
  readonly countThen: Readonly<Record<string, string>>;
  /** Classes the maker decides; the others follow the defaults. */
  readonly rules: Readonly<Partial<Record<EarlyPriceClass, RuleDraft>>>;
  /** Percent more (or less, with a minus) than the past pieces say. */
  readonly adjustment: string;
  readonly reason: string;
  readonly below: string;
  readonly above: string;
  /** `then`: as the first past piece was priced. */
  readonly policy: 'then' | 'margin' | 'markup' | 'hourly-earnings';
  readonly rate: string;
  readonly step: string;
}

export const NEW_DRAFT: EarlyPriceDraft = {
  length: '',
  width: '',
  height: '',
  hours: '',
  count: '',
  countThen: {},
  rules: {},
  adjustment: '',
  reason: '',
  below: toPercent(DEFAULT_BAND.below),
  above: toPercent(DEFAULT_BAND.above),
  policy: 'then',
  rate: '',
  step: '',
};

/** The size of a past piece as text to start from. */
export function sizeTexts(piece: PastPiece, system: LengthSystem): Pick<EarlyPriceDraft, Side> | null {
  const { size } = piece;
  if (size === undefined) return null;
  const text = (side: Side) => formatLength(size[side], system);
  return { length: text('length'), width: text('width'), height: text('height') };
}

/** The rule of a class as it stands: the maker's own, or the default. */
export function ruleOf(draft: EarlyPriceDraft, name: EarlyPriceClass): RuleDraft {
  const own = draft.rules[name];
  if (own !== undefined) return own;
  const { basis, exponent } = defaultScaling(draft.hours.trim() !== '')[name];
  return { basis, exponent: String(exponent) };
}

/**
 * The input as the calculation takes it.
 * @throws CostingInputError naming a field that cannot be read, as the calculation itself does
 */
export function toEarlyPriceInput(
  draft: EarlyPriceDraft,
  past: readonly PastPieceAnswer[],
  system: LengthSystem,
): EarlyPriceInput {
  const [first] = past;
  if (first === undefined)
    throw new CostingInputError('pieces', 'cannot be 0 past pieces', 'choose 1 to 8 pieces that were costed');
  const typed = SIDES.filter((side) => draft[side].trim() !== '');
  const size =
    typed.length === 0
      ? {}
      : {
          size: {
            length: mm('length', draft, system),
            width: mm('width', draft, system),
            height: mm('height', draft, system),
          },
        };
  const number = (text: string) => plainDecimal(text);
  const optional = <Name extends string>(name: Name, text: string | undefined) =>
    text === undefined || text.trim() === '' ? {} : ({ [name]: number(text) } as Record<Name, string>);
  const step = number(draft.step);
  return {
    currency: first.currency,
    pieces: past.map(({ piece }) => ({ ...piece, ...optional('count', draft.countThen[piece.id]) })),
    asked: { ...size, ...optional('count', draft.count), ...optional('hours', draft.hours) },
    ...(Object.keys(draft.rules).length === 0 ? {} : { scaling: scalingOf(draft) }),
    ...adjustmentOf(draft),
    ...(draft.below === NEW_DRAFT.below && draft.above === NEW_DRAFT.above
      ? {}
      : { band: { below: fromPercent(draft.below), above: fromPercent(draft.above) } }),
    terms: {
      discount: '0',
      policy: policyOf(draft, first),
      ...(step === ''
        ? first.terms.priceStep === undefined
          ? {}
          : { priceStep: first.terms.priceStep }
        : { priceStep: { to: step, direction: 'nearest' } }),
    },
  };
}

function mm(side: Side, draft: EarlyPriceDraft, system: LengthSystem): string {
  try {
    return parseLength(draft[side], system === 'imperial' ? 'in' : 'mm').toFixed();
  } catch (error) {
    if (!(error instanceof UnreadableLengthError)) throw error;
    throw new CostingInputError(
      `asked.size.${side}`,
      draft[side].trim() === '' ? 'is missing' : `cannot be "${draft[side]}"`,
      'write it like 1200 mm, 48" or 4\' 6"',
    );
  }
}

function scalingOf(draft: EarlyPriceDraft): Partial<Scaling> {
  return Object.fromEntries(
    EARLY_PRICE_CLASSES.flatMap((name) => {
      const rule = draft.rules[name];
      return rule === undefined ? [] : [[name, { ...rule, exponent: plainDecimal(rule.exponent) }]];
    }),
  );
}

function adjustmentOf({ adjustment, reason }: EarlyPriceDraft) {
  const percent = fromPercent(adjustment);
  if (percent === '') return {};
  if (!/^-?\d+(\.\d+)?$/.test(percent))
    throw new CostingInputError(
      'adjustment.factor',
      `cannot be "${adjustment}"`,
      'write percent, such as 10 or -5',
    );
  return { adjustment: { factor: decimal(percent).plus(1).toFixed(), reason } };
}

/** A price that was entered is turned into the markup it left, since an early price is worked out. */
function policyOf({ policy, rate }: EarlyPriceDraft, first: PastPieceAnswer): PricePolicy {
  if (policy === 'margin') return { kind: 'margin', margin: fromPercent(rate) };
  if (policy === 'markup') return { kind: 'markup', markup: fromPercent(rate) };
  if (policy === 'hourly-earnings') return { kind: 'hourly-earnings', perHour: plainDecimal(rate) };
  if (first.terms.policy.kind !== 'entered') return first.terms.policy;
  const { piece, priceThen } = first;
  const cost = sumOf(EARLY_PRICE_CLASSES.map((name) => piece[name]));
  const markup = cost.isZero() ? decimal(0) : decimal(priceThen).div(cost).minus(1);
  return { kind: 'markup', markup: (markup.isNegative() ? decimal(0) : markup).toDecimalPlaces(6).toFixed() };
}
