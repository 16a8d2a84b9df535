import { type Figure, least, number, scale, share } from '@scantling/figures';

/** Months in use over the months the year's expense was worked out for; never more than all of it. */
export function monthsShare(yearShare: Figure<'ratio'>, months: Figure<'ratio'>): Figure<'ratio'> {
  const counted = scale('months the expense stands for', yearShare, number(12, 'months in a year'));
  return least(
    'part of the year until disposal',
    share('months in use over months counted', months, counted),
    number(1, 'the whole year'),
  );
}
