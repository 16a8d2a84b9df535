import { expect, it } from 'vitest';
import { addDays, daysBetween } from './calendar-day.ts';

it('counts days over months, leap days and years', () => {
  // The Gregorian calendar: 2024 has a 29 February, 2026 has none.
  expect(addDays('2026-02-27', 2)).toBe('2026-03-01');
  expect(addDays('2024-02-27', 2)).toBe('2024-02-29');
  expect(addDays('2026-12-31', 1)).toBe('2027-01-01');
  expect(daysBetween('2025-03-01', '2026-03-01')).toBe(365);
  expect(daysBetween('2026-03-02', '2026-03-01')).toBe(-1);
});
