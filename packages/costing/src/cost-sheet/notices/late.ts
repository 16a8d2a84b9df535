import { addDays } from '../../calendar-day.ts';
import type { NoticeRule } from './notice.ts';

/** A material that comes after the promised day, ordered on the sheet's date. */
export const late: NoticeRule = ({ materials }, sheet) => {
  const { onDate, terms } = sheet.input;
  const promised = terms.promisedDate;
  if (promised === undefined) return [];
  return materials.flatMap(({ material, offer }) => {
    if (offer.leadDays === undefined) return [];
    const comes = addDays(onDate, offer.leadDays);
    if (comes <= promised) return [];
    return [
      {
        kind: 'late' as const,
        weight: 'warning' as const,
        about: material.code,
        message: `${material.name} takes ${offer.leadDays} days from ${offer.supplierName}: ordered on ${onDate} it comes on ${comes}, after the promised ${promised}`,
        mend: 'choose another supplier or material, or promise a later day',
        record: `material:${material.code}`,
      },
    ];
  });
};
