import { entered, type Figure, input, shareOut } from '@scantling/figures';
import { QuotingInputError } from '../input-error.ts';
import { readDecimal } from './line-amount.ts';
import type { ScheduledPart } from './totals-input.ts';

export interface ScheduledAmount {
  readonly part: ScheduledPart;
  readonly amount: Figure<'money'>;
}

/**
 * The total with tax in parts that add up to it, by largest remainder.
 * @throws QuotingInputError where a share is below 0, a part stands twice, or the shares do not add up to 1
 */
export function scheduledAmounts(
  schedule: readonly ScheduledPart[],
  total: Figure<'money'>,
): ScheduledAmount[] {
  if (schedule.length === 0) return [];
  const shares = schedule.map((part, at) => {
    const share = readDecimal(`schedule.${at}.share`, part.share);
    if (share.lt(0) || share.gt(1))
      throw new QuotingInputError(
        `schedule.${at}.share`,
        `is ${share}`,
        'enter a share from 0 to 1 (0.4 is 40 %)',
      );
    if (schedule.findIndex(({ id }) => id === part.id) !== at)
      throw new QuotingInputError(`schedule.${at}.id`, `is "${part.id}" again`, 'give each part its own id');
    return share;
  });
  const whole = shares.reduce((sum, share) => sum.plus(share));
  if (!whole.eq(1))
    throw new QuotingInputError(
      'schedule',
      `comes to ${whole.times(100)} % of the total`,
      'let the parts add up to 100 %',
    );
  const weights = schedule.map(({ id, label }, at) =>
    input({
      key: `schedule/${id}/share`,
      label: `${label}: share of the total`,
      unit: 'ratio',
      value: shares[at] ?? 0,
      source: entered(),
    }),
  );
  const amounts = shareOut(
    schedule.map(({ label }) => label),
    total,
    weights,
  );
  return schedule.flatMap((part, at) => {
    const amount = amounts[at];
    return amount === undefined ? [] : [{ part, amount }];
  });
}
