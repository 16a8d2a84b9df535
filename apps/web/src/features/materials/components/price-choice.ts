import { boughtCost, type ChosenOffer, chooseOffer, type PriceOffer } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import { type Figure, input } from '@scantling/figures';
import { type BaseUnit, PRICING_UNITS } from '@scantling/units';
import type { MaterialPrice } from '../api/list-material-prices.ts';

/** The lines of the same supplier, list, article and unit as one offer, with its breaks from the lowest. */
export function offersOf(prices: readonly MaterialPrice[]): PriceOffer[] {
  const groups = new Map<string, MaterialPrice[]>();
  for (const price of prices) {
    const key = [price.list.id, price.line.itemId, price.line.unit].join('\n');
    groups.set(key, [...(groups.get(key) ?? []), price]);
  }
  return [...groups.values()].flatMap((group) => {
    const lines = group.toSorted((a, b) => decimal(a.line.breakFrom).comparedTo(b.line.breakFrom));
    const first = lines[0];
    return first === undefined ? [] : [offerOf(first, lines)];
  });
}

function offerOf({ line, list, supplier, endedFrom }: MaterialPrice, lines: MaterialPrice[]): PriceOffer {
  return {
    id: line.id,
    supplier: supplier.id,
    supplierName: supplier.name,
    listId: list.id,
    listName: list.name,
    listDate: list.validFrom,
    code: line.code,
    row: line.rowNumber,
    unit: line.unit,
    currency: list.currency,
    breakKind: line.breakKind,
    breaks: lines.map(({ line: one }) => ({
      from: one.breakFrom,
      amount: one.amount,
      ...(one.id === line.id
        ? {}
        : {
            line: {
              id: one.id,
              listId: list.id,
              listName: list.name,
              listDate: list.validFrom,
              row: one.rowNumber,
            },
          }),
    })),
    ...(list.validTo === null ? {} : { validTo: list.validTo }),
    ...(endedFrom === null ? {} : { endedFrom }),
    ...(line.packSize === null ? {} : { packSize: line.packSize }),
    ...(line.minimumQuantity === null ? {} : { minimumQuantity: line.minimumQuantity }),
    // Amounts are compared as listed; a cost sheet adds the tax that stays and changes the currency.
    tax: { isIncluded: list.taxIncluded, rate: '0', recoverableShare: '1' },
  };
}

/** What is asked for: so much, in the unit and currency that offers are compared in. */
export interface Need {
  /** Decimal text above 0. */
  readonly quantity: string;
  readonly unit: PriceOffer['unit'];
  readonly currency: PriceOffer['currency'];
}

export function costOfNeed(offer: PriceOffer, need: Need): Figure<'money'> {
  const quantity: Figure<BaseUnit> = input({
    key: 'need',
    label: 'quantity needed',
    unit: PRICING_UNITS[need.unit].baseUnit,
    value: need.quantity,
    source: { kind: 'entered', text: 'entered on this sheet' },
  });
  return boughtCost(offer.code, offer, quantity).cost;
}

/** The offer a cost sheet would take for that need on that day (YYYY-MM-DD), with the rule in words. */
export function usedOffer(
  offers: readonly PriceOffer[],
  onDate: string,
  preferredSupplier: string | null,
  need: Need,
): ChosenOffer | null {
  return chooseOffer(offers, onDate, preferredSupplier ?? undefined, (offer) =>
    offer.unit === need.unit && offer.currency === need.currency ? costOfNeed(offer, need).value : null,
  );
}
