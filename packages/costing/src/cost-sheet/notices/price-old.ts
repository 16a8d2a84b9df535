import { daysBetween } from '../../calendar-day.ts';
import type { NoticeRule } from './notice.ts';

/** A price from a list older than the workshop trusts. */
export const priceOld: NoticeRule = ({ materials }, sheet) => {
  const { onDate, rates } = sheet.input;
  const limit = rates.priceAgeDays;
  if (limit === undefined) return [];
  return materials.flatMap(({ material, offer }) => {
    const age = daysBetween(offer.listDate, onDate);
    if (age <= limit) return [];
    return [
      {
        kind: 'price-old' as const,
        weight: 'warning' as const,
        about: material.code,
        message: `${material.name} is costed at a price of ${offer.supplierName} of ${offer.listDate}, ${age} days old; the workshop trusts ${limit}`,
        mend: 'ask the supplier whether it still holds, and import the list anew',
        record: `material:${material.code}`,
      },
    ];
  });
};
