import { type DecimalLike, decimal } from '@scantling/decimals';
import {
  complement,
  derive,
  exchange,
  type Figure,
  increment,
  input,
  type LeafBounds,
  SHARE_BOUNDS,
  type Source,
  scale,
} from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { type BaseUnit, PRICING_UNITS } from '@scantling/units';
import { CostingInputError } from '../input-error.ts';
import type { Exchange, ListedLine, PriceBreak, PriceOffer, PurchaseTax } from './price-offer.ts';

export interface Tier {
  readonly from: Figure<BaseUnit>;
  /** What a purchase unit costs: net, plus the tax that cannot be recovered, in the sheet's currency. */
  readonly price: Figure<`money/${BaseUnit}`>;
}

export type Tiers = readonly [Tier, ...Tier[]];

/** The breaks of offers as figures, each made once, so that every quantity of a sheet shares them. */
export class OfferTiers {
  readonly #known = new Map<PriceOffer, Tiers>();

  of(offer: PriceOffer): Tiers {
    const before = this.#known.get(offer);
    if (before) return before;
    const made = makeTiers(offer);
    this.#known.set(offer, made);
    return made;
  }
}

/** Where the keys of an offer's leaves begin: its identity, so that two dates can be compared leaf by leaf. */
export function offerKey(offer: PriceOffer): string {
  return `price/${offer.supplier}/${offer.code}/${offer.unit}`;
}

/** Where the numbers of an offer come from, down to the line of the list. */
export function offerSource(offer: PriceOffer, step?: PriceBreak): Source {
  const { id, listId, listName, listDate, row } = step?.line ?? offer;
  return {
    kind: 'price-list',
    text: `${offer.supplierName}, ${listName} of ${listDate}, line ${row} (${offer.code})`,
    record: listId === undefined ? `price-line:${id}` : `price-line:${listId}/${id}`,
  };
}

/**
 * The line that says the price of the last unit when so much is bought: where a break holds on from an older list, that
 * list's.
 * @param quantity in the offer's unit
 */
export function lineAt(offer: PriceOffer, quantity: DecimalLike): ListedAt {
  let line: ListedAt = offer;
  for (const step of offer.breaks) if (decimal(quantity).gte(step.from)) line = step.line ?? offer;
  return line;
}

type ListedAt = Pick<ListedLine, 'id' | 'listName' | 'listDate'> & Partial<Pick<ListedLine, 'listId'>>;

function makeTiers(offer: PriceOffer): Tiers {
  const unit = PRICING_UNITS[offer.unit].baseUnit;
  const key = offerKey(offer);
  const factor = taxFactor(offer.code, offer.tax, `${key}/tax`, offerSource(offer));
  const tiers = offer.breaks.map((step): Tier => {
    const source = offerSource(offer, step);
    const listed = input({
      key: `${key}/${step.from}`,
      label: Number(step.from) === 0 ? `price of ${offer.code}` : `price of ${offer.code} from ${step.from}`,
      unit: `money/${unit}`,
      value: step.amount,
      currency: offer.currency,
      source,
    });
    const net = factor === null ? listed : scale(`net price of ${offer.code}`, listed, factor);
    return {
      from: input({
        key: `${key}/from-${step.from}`,
        label: `${offer.code}: quantity of the break at ${step.from}`,
        unit,
        value: step.from,
        source,
      }),
      price: offer.exchange ? exchanged(offer, net, offer.exchange) : net,
    };
  });
  const [first, ...more] = tiers;
  if (first === undefined) {
    throw new CostingInputError(`offers.${offer.id}.breaks`, 'is empty', 'give the price from quantity 0');
  }
  return [first, ...more];
}

/**
 * net + what cannot be recovered, as one factor on the listed price; null where tax changes nothing.
 * @param subject whose tax it is, an article or a supplier
 */
export function taxFactor(
  subject: string,
  tax: PurchaseTax,
  key: string,
  source: Source,
): Figure<'ratio'> | null {
  if (Number(tax.rate) === 0) return null;
  const leaf = (name: string, label: string, value: string, bounds: LeafBounds) =>
    input({ key: `${key}-${name}`, label: `${subject}: ${label}`, unit: 'ratio', value, source, bounds });
  const rate = leaf('rate', 'tax on purchases', tax.rate, { least: '0' });
  const lost = complement(
    'share of the tax that is not recovered',
    leaf('recoverable', 'share of the tax recovered', tax.recoverableShare, SHARE_BOUNDS),
  );
  const kept = scale('tax that stays a cost', rate, lost);
  const withTax = increment('net price and the tax that stays', kept);
  if (!tax.isIncluded) return kept.value.isZero() ? null : withTax;
  return derive('from the price with tax to what it costs', 'ratio', 'quotient', [
    withTax,
    increment('price with tax', rate),
  ]);
}

/** A dated rate into the sheet's currency, as a leaf. */
export function exchangeFigure(from: Currency, rate: Exchange): Figure<'ratio'> {
  return input({
    key: `exchange-rate/${from}/${rate.onDate}`,
    label: `exchange rate of ${rate.onDate}`,
    unit: 'ratio',
    value: rate.rate,
    source: { kind: 'exchange-rate', text: rate.source, record: `exchange-rate:${from}-${rate.to}` },
  });
}

function exchanged<U extends `money/${BaseUnit}`>(
  offer: PriceOffer,
  price: Figure<U>,
  rate: Exchange,
): Figure<U> {
  return exchange(`price in ${rate.to}`, price, exchangeFigure(offer.currency, rate), rate.to);
}
