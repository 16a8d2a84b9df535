import { decimal } from '@scantling/decimals';
import type { PriceOffer } from './price-offer.ts';

/** Why an offer was taken, in words for the working. */
export interface ChosenOffer {
  readonly offer: PriceOffer;
  readonly rule: string;
}

/** True when the offer's list is dated, not run out and not ended on that day (YYYY-MM-DD). */
export function isInForce(offer: PriceOffer, onDate: string): boolean {
  return isListed(offer, onDate) && !hasRunOut(offer, onDate);
}

/** True when the list's last day is over on that day. */
export function hasRunOut(offer: PriceOffer, onDate: string): boolean {
  return offer.validTo !== undefined && offer.validTo < onDate;
}

/** Dated by that day and not ended by a later complete list. */
function isListed(offer: PriceOffer, onDate: string): boolean {
  return offer.listDate <= onDate && (offer.endedFrom === undefined || onDate < offer.endedFrom);
}

/** The newest offer in force of every supplier, code and unit. */
export function offersInForce(offers: readonly PriceOffer[], onDate: string): PriceOffer[] {
  return newestOf(offers.filter((offer) => isInForce(offer, onDate)));
}

function newestOf(offers: readonly PriceOffer[]): PriceOffer[] {
  const newest = new Map<string, PriceOffer>();
  for (const offer of offers) {
    const identity = `${offer.supplier}\n${offer.code}\n${offer.unit}`;
    const known = newest.get(identity);
    if (known === undefined || known.listDate < offer.listDate) newest.set(identity, offer);
  }
  return [...newest.values()];
}

/**
 * The price used on a date: of the offers in force, those of the preferred supplier if it has any; among
 * these the least cost for the need as `costOf` works it out; among equals the newest list, then the lower code.
 * Where nothing in force covers the need, the same among prices that have run out, which the rule says.
 * @param costOf cost of covering the need by that offer, or null when it cannot
 * @returns null when no offer can cover the need
 */
export function chooseOffer(
  offers: readonly PriceOffer[],
  onDate: string,
  preferredSupplier: string | undefined,
  costOf: (offer: PriceOffer) => { toString(): string } | null,
): ChosenOffer | null {
  const best = (among: readonly PriceOffer[]) => leastOf(among, preferredSupplier, costOf);
  const inForce = best(offersInForce(offers, onDate));
  if (inForce !== null) {
    const whose = inForce.isPreferred ? "the preferred supplier's price in force" : 'the price in force';
    return { offer: inForce.offer, rule: `${whose} on ${onDate}${among(inForce.count)}` };
  }
  const last = best(newestOf(offers.filter((one) => isListed(one, onDate) && hasRunOut(one, onDate))));
  if (last === null) return null;
  const { offer, count } = last;
  return { offer, rule: `the last price there was, which ran out on ${offer.validTo}${among(count)}` };
}

function among(count: number): string {
  return count > 1 ? `, the cheapest of ${count} for this quantity` : '';
}

function leastOf(
  offers: readonly PriceOffer[],
  preferredSupplier: string | undefined,
  costOf: (offer: PriceOffer) => { toString(): string } | null,
): { offer: PriceOffer; count: number; isPreferred: boolean } | null {
  const preferred = offers.filter((offer) => offer.supplier === preferredSupplier);
  const isPreferred = preferred.length > 0;
  const priced = (isPreferred ? preferred : offers).flatMap((offer) => {
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
  return first === undefined ? null : { offer: first.offer, count: priced.length, isPreferred };
}
