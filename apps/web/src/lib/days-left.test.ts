import { expect, it } from 'vitest';
import { daysLeft, daysLeftWords } from './days-left.ts';

it('counts days, over the end of a month and over the night the clocks change', () => {
  expect(daysLeft('2026-02-27', '2026-03-02')).toBe(3);
  expect(daysLeft('2026-03-28', '2026-03-30')).toBe(2);
  expect(daysLeft('2028-02-28', '2028-03-01')).toBe(2);
});

it('says what is left, that it is the last day, or how long it is over', () => {
  const said = ['2026-03-12', '2026-03-02', '2026-03-01', '2026-02-27'].map((until) =>
    daysLeftWords('2026-03-01', until),
  );
  expect(said).toEqual(['11 days left', '1 day left', 'today is the last day', '2 days over']);
});
