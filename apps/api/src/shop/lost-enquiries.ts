import { type LabourGrade, labourRate } from '@scantling/costing';
import { derive, type Figure, input, sum } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import type { Prisma } from '../generated/prisma/client.ts';

/** Hours of one grade on one enquiry that was lost. */
export interface LostHours {
  readonly enquiryId: string;
  readonly enquiryName: string;
  /** Code of the grade. */
  readonly gradeId: string;
  readonly hours: string;
}

/** The hours of the twelve months up to a day, on enquiries that are lost by now. */
export async function readLostHours(database: Prisma.TransactionClient, today: string): Promise<LostHours[]> {
  const end = new Date(today);
  const yearAgo = new Date(end);
  yearAgo.setUTCFullYear(end.getUTCFullYear() - 1);
  const sums = await database.enquiryHours.groupBy({
    by: ['enquiryId', 'gradeId'],
    where: { enquiry: { outcome: 'lost' }, onDate: { gt: yearAgo, lte: end } },
    orderBy: [{ enquiryId: 'asc' }, { gradeId: 'asc' }],
    _sum: { hours: true },
  });
  const enquiries = await database.enquiry.findMany({
    where: { id: { in: sums.map(({ enquiryId }) => enquiryId) } },
    select: { id: true, name: true },
  });
  const grades = await database.labourGrade.findMany({ select: { id: true, code: true } });
  const names = new Map(enquiries.map(({ id, name }) => [id, name]));
  const codes = new Map(grades.map(({ id, code }) => [id, code]));
  return sums.map(({ enquiryId, gradeId, _sum }) => ({
    enquiryId,
    enquiryName: names.get(enquiryId) ?? enquiryId,
    gradeId: codes.get(gradeId) ?? gradeId,
    hours: _sum.hours?.toFixed() ?? '0',
  }));
}

export interface LostEnquiries {
  readonly hours: Figure<'h/year'>;
  /** Those hours at what a paid hour costs with burden. */
  readonly perYear: Figure<'money/year'>;
}

/** What hours on lost enquiries cost in a year, or null where there are none. @throws CostingInputError */
export function lostEnquiries(
  lost: readonly LostHours[],
  grades: readonly LabourGrade[],
  currency: Currency,
): LostEnquiries | null {
  const rates = new Map(grades.map((grade) => [grade.id, labourRate(grade, { currency })]));
  const lines = lost.flatMap((one) => {
    const rate = rates.get(one.gradeId);
    if (rate === undefined) return [];
    const hours = input({
      key: `lost-enquiries/${one.enquiryId}/${one.gradeId}/hours`,
      label: `${one.enquiryName}: hours of ${rate.name}`,
      unit: 'h/year',
      value: one.hours,
      source: {
        kind: 'measured-time',
        text: `hours of the last twelve months on the lost enquiry "${one.enquiryName}"`,
        record: `enquiry:${one.enquiryId}`,
      },
    });
    const cost = derive(`${one.enquiryName}: paid hours of ${rate.name}`, 'money/year', 'product', [
      rate.paidHour,
      hours,
    ]);
    return [{ hours, cost }];
  });
  if (lines.length === 0) return null;
  return {
    hours: sum(
      'hours on lost enquiries a year',
      'h/year',
      lines.map(({ hours }) => hours),
    ),
    perYear: sum(
      'hours on lost enquiries',
      'money/year',
      lines.map(({ cost }) => cost),
    ),
  };
}
