import { decimal } from '@scantling/decimals';
import type { PriceOffer } from './price-offer.ts';

/** Why an offer was taken, in words for the working. */
export interface ChosenOffer {
  readonly offer: PriceOffer;
  readonly rule: string;
}

/** True when the offer's list is dated, not run out and not ended on that day (YYYY-MM-DD). */
export function isInForce(offer: PriceOffer, onDate: string): boolean {
  return (
    offer.listDate <= onDate &&
    (offer.validTo === undefined || onDate <= offer.validTo) &&
    (offer.endedFrom === undefined || onDate < offer.endedFrom)
  );
}

/** The newest offer in force of every supplier, code and unit. */
export function offersInForce(offers: readonly PriceOffer[], onDate: string): PriceOffer[] {
  const newest = new Map<string, PriceOffer>();
  for (const offer of offers) {
    if (!isInForce(offer, onDate)) continue;
    const identity = `${offer.supplier}\n${offer.code}\n${offer.unit}`;
    const known = newest.get(identity);
    if (known === undefined || known.listDate < offer.listDate) newest.set(identity, offer);
  }
  return [...newest.values()];
}

/**
 * The price used on a date: of the offers in force, those of the preferred supplier if it has any; among
 * these the least cost for the need as `costOf` works it out; among equals the newest list, then the lower code.
 * @param costOf cost of covering the need by that offer, or null when it cannot
 * @returns null when no offer in force can cover the need
 */
export function chooseOffer(
  offers: readonly PriceOffer[],
  onDate: string,
  preferredSupplier: string | undefined,
  costOf: (offer: PriceOffer) => { toString(): string } | null,
): ChosenOffer | null {
  const inForce = offersInForce(offers, onDate);
  const preferred = inForce.filter((offer) => offer.supplier === preferredSupplier);
  const from = preferred.length > 0 ? preferred : inForce;
  const priced = from.flatMap((offer) => {
    const cost = costOf(offer);
    return cost === null ? [] : [{ offer, cost: decimal(cost.toString()) }];
  });
  priced.sort(
    (a, b) =>
      a.cost.comparedTo(b.cost) ||
      b.offer.listDate.localeCompare(a.offer.listDate) ||
      a.offer.code.localeCompare(b.offer.code),
  );
  const first = priced[0];
  if (first === undefined) return null;
  const whose = preferred.length > 0 ? "the preferred supplier's price in force" : 'the price in force';
  const among = priced.length > 1 ? `, the cheapest of ${priced.length} for this quantity` : '';
  return { offer: first.offer, rule: `${whose} on ${onDate}${among}` };
}
