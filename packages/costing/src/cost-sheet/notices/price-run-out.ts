import { hasRunOut } from '../../price-list/index.ts';
import { byPriceList } from './by-price-list.ts';
import type { NoticeRule } from './notice.ts';

/** Prices whose list held until a day before the sheet's date, used for want of others. */
export const priceRunOut: NoticeRule = ({ materials }, sheet) =>
  byPriceList(materials.filter(({ offer }) => hasRunOut(offer, sheet.input.onDate))).map(
    ({ offer, names }) => ({
      kind: 'price-run-out',
      weight: 'warning',
      about: offer.supplierName,
      message: `${offer.listName} of ${offer.supplierName} ran out on ${offer.validTo}; it still prices ${names}`,
      mend: 'ask the supplier for the new list and import it',
      record: `supplier:${offer.supplier}`,
    }),
  );
