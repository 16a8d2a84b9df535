import { BREAK_KINDS, type BreakKind, isInForce, type ListedLine, type PriceOffer } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import { type Currency, isCurrency, NoExchangeRateError } from '@scantling/money';
import { isPricingUnitId } from '@scantling/units';
import type { DatabaseAccess } from './database-access.ts';
import { exchangesInto } from './exchange-on.ts';
import {
  type CompleteList,
  type LeftOut,
  type OfferLine,
  readCompleteLists,
  readListOrder,
  readOfferLines,
} from './offer-lines.ts';

function isBreakKind(text: string): text is BreakKind {
  return BREAK_KINDS.some((kind) => kind === text);
}

/** Lines by supplier, code and unit; within one, by list in their order. */
function byIdentity(lines: readonly OfferLine[]): OfferLine[][][] {
  const identities = new Map<string, Map<string, OfferLine[]>>();
  for (const line of lines) {
    const identity = JSON.stringify([line.supplierId, line.code, line.unit]);
    const lists = identities.get(identity) ?? new Map<string, OfferLine[]>();
    identities.set(identity, lists);
    lists.set(line.listId, [...(lists.get(line.listId) ?? []), line]);
  }
  return [...identities.values()].map((lists) => [...lists.values()]);
}

/** A break of an older list holds on beside a newer list that does not name it, if the terms are the same. */
function carries(older: OfferLine, newer: OfferLine): boolean {
  return (
    older.currency === newer.currency &&
    older.breakKind === newer.breakKind &&
    older.taxIncluded === newer.taxIncluded &&
    older.taxRate === newer.taxRate &&
    older.taxRecoverable === newer.taxRecoverable &&
    (older.validTo === null || older.validTo >= newer.listDate)
  );
}

function listedLine({ id, listId, listName, listDate, row }: OfferLine): ListedLine {
  return { id, listId, listName, listDate, row };
}

function toOffer(
  lines: readonly OfferLine[],
  own: OfferLine,
  endedFrom: string | undefined,
): PriceOffer | null {
  const steps = [...lines].sort((a, b) => decimal(a.breakFrom).comparedTo(b.breakFrom));
  const first = steps[0];
  if (
    first === undefined ||
    !isPricingUnitId(own.unit) ||
    !isBreakKind(own.breakKind) ||
    !isCurrency(own.currency)
  )
    return null;
  // Where nothing is priced from 0, the least break is the least that can be bought.
  const least = [own.minimumQuantity ?? '0', first.breakFrom].reduce((a, b) => (decimal(a).gte(b) ? a : b));
  return {
    id: own.id,
    supplier: own.supplier,
    supplierName: own.supplierName,
    listId: own.listId,
    listName: own.listName,
    listDate: own.listDate,
    ...(own.validTo === null ? {} : { validTo: own.validTo }),
    ...(endedFrom === undefined ? {} : { endedFrom }),
    code: own.code,
    row: own.row,
    unit: own.unit,
    currency: own.currency,
    breakKind: own.breakKind,
    breaks: steps.map((step, index) => ({
      from: index === 0 ? '0' : step.breakFrom,
      amount: step.amount,
      ...(step.id === own.id ? {} : { line: listedLine(step) }),
    })),
    ...(own.packSize === null ? {} : { packSize: own.packSize }),
    ...(decimal(least).isZero() ? {} : { minimumQuantity: least }),
    ...(own.leadDays === null ? {} : { leadDays: own.leadDays }),
    tax: { isIncluded: own.taxIncluded, rate: own.taxRate, recoverableShare: own.taxRecoverable },
  };
}

/** The offers of one supplier, code and unit, list by list, each with the breaks that hold on from earlier lists. */
function offersOfIdentity(
  lists: readonly (readonly OfferLine[])[],
  complete: readonly CompleteList[],
  order: ReadonlyMap<string, number>,
): PriceOffer[] {
  const offers: PriceOffer[] = [];
  const named = new Set(lists.map((lines) => lines[0]?.listId));
  const place = (listId: string) => order.get(listId) ?? -1;
  let held: OfferLine[] = [];
  for (const lines of lists) {
    const own = lines[0];
    if (own === undefined) continue;
    const isOver = (line: OfferLine) =>
      complete.some(({ id }) => place(id) > place(line.listId) && place(id) <= place(own.listId));
    const fresh = new Set(lines.map((line) => line.breakFrom));
    held = [
      ...lines,
      ...held.filter((line) => !fresh.has(line.breakFrom) && carries(line, own) && !isOver(line)),
    ];
    const ending = complete.find(({ id }) => place(id) > place(own.listId) && !named.has(id));
    const offer = toOffer(held, own, ending?.date);
    // Newest first: of two lists of one day the later entered one wins.
    if (offer !== null) offers.unshift(offer);
  }
  return offers;
}

/**
 * What suppliers ask for the materials, from every list dated on or before the day, with rates of exchange into the
 * currency. A material nobody prices has no entry.
 * @param onDate YYYY-MM-DD
 * @param leftOut a list that is left out, as if it had never come
 * @throws NoExchangeRateError where a price in force is in a currency without a rate on that day
 */
export async function offersFor(
  database: DatabaseAccess,
  materialCodes: readonly string[],
  onDate: string,
  currency: Currency,
  leftOut: LeftOut = {},
): Promise<Map<string, PriceOffer[]>> {
  const lines = await readOfferLines(database, materialCodes, onDate, leftOut);
  const suppliers = [...new Set(lines.map(({ supplierId }) => supplierId))];
  const [complete, order, exchangeFrom] = await Promise.all([
    readCompleteLists(database, suppliers, onDate, leftOut),
    readListOrder(database, suppliers, onDate, leftOut),
    exchangesInto(database, currency, onDate),
  ]);
  const offers = new Map<string, PriceOffer[]>();
  for (const lists of byIdentity(lines)) {
    const own = lists[0]?.[0];
    if (own === undefined) continue;
    const ofSupplier = complete.filter(({ supplierId }) => supplierId === own.supplierId);
    for (const offer of offersOfIdentity(lists, ofSupplier, order)) {
      const exchange = offer.currency === currency ? undefined : exchangeFrom(offer.currency);
      if (exchange === null) {
        if (isInForce(offer, onDate)) throw new NoExchangeRateError(offer.currency, currency, onDate);
        continue;
      }
      const known = offers.get(own.material) ?? [];
      known.push(exchange === undefined ? offer : { ...offer, exchange });
      offers.set(own.material, known);
    }
  }
  return offers;
}
