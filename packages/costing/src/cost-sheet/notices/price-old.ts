import { daysBetween } from '../../calendar-day.ts';
import { byPriceList } from './by-price-list.ts';
import type { NoticeRule } from './notice.ts';

/** Prices from a list older than the workshop trusts. */
export const priceOld: NoticeRule = ({ materials }, sheet) => {
  const { onDate, rates } = sheet.input;
  const limit = rates.priceAgeDays;
  if (limit === undefined) return [];
  const old = materials.filter(({ offer }) => daysBetween(offer.listDate, onDate) > limit);
  return byPriceList(old).map(({ offer, names }) => ({
    kind: 'price-old',
    weight: 'warning',
    about: offer.supplierName,
    message: `${offer.listName} of ${offer.supplierName}, ${offer.listDate}, is ${daysBetween(offer.listDate, onDate)} days old, and the workshop trusts ${limit}; it prices ${names}`,
    mend: 'ask the supplier whether it still holds, and import the list anew',
    record: `supplier:${offer.supplier}`,
  }));
};
