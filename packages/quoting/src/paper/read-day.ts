import { QuotingInputError } from '../input-error.ts';

/** A day of ISO 8601 as UTC midnight. @throws QuotingInputError for what is no day of the calendar */
export function readDay(field: string, day: string): Date {
  const read = new Date(`${day}T00:00:00Z`);
  if (!/^\d{4}-\d\d-\d\d$/.test(day) || Number.isNaN(read.getTime()) || !read.toISOString().startsWith(day))
    throw new QuotingInputError(field, `is no day of the calendar: "${day}"`, 'Write it as "2026-11-25".');
  return read;
}
