import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import { calendarDate, recordId } from '../record.ts';

export const enquiryHoursInputSchema = z.strictObject({
  onDate: calendarDate,
  personId: recordId,
  hours: boundedDecimal({ digits: 3, places: 2, isPositive: true, example: '1.5' }),
  note: z.string().trim().max(500),
});

export const enquiryHoursSchema = z
  .strictObject({
    id: recordId,
    onDate: calendarDate,
    /** null once the person is no longer on record; name and grade stay. */
    personId: recordId.nullable(),
    personName: z.string(),
    gradeCode: z.string(),
    hours: z.string(),
    note: z.string(),
  })
  .meta({ id: 'EnquiryHours' });
export type EnquiryHoursRecord = z.output<typeof enquiryHoursSchema>;

export const exampleEnquiryHoursInput = {
  onDate: '2026-03-03',
  personId: '0193f6a0-7c11-7000-8000-000000000002',
  hours: '1.5',
  note: 'Visit and measuring',
} as const;
export const exampleEnquiryHours = {
  ...exampleEnquiryHoursInput,
  id: '0193f6a0-7c11-7000-8000-000000000041',
  personName: 'Odo Fennick (invented)',
  gradeCode: 'owner',
} as const;
