import { hasRunOut } from '../../price-list/index.ts';
import type { NoticeRule } from './notice.ts';

/** A price whose list held until a day before the sheet's date, used for want of another. */
export const priceRunOut: NoticeRule = ({ materials }, sheet) =>
  materials
    .filter(({ offer }) => hasRunOut(offer, sheet.input.onDate))
    .map(({ material, offer }) => ({
      kind: 'price-run-out',
      weight: 'warning',
      about: material.code,
      message: `${material.name} is costed at a price of ${offer.supplierName} that ran out on ${offer.validTo}`,
      mend: 'ask the supplier for the new list and import it',
      record: `material:${material.code}`,
    }));
