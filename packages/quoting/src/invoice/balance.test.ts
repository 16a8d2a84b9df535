import { describe, expect, it } from 'vitest';
import { statement } from './balance.ts';

describe('what is owed', () => {
  it('is invoiced less credited less paid, and names what is overdue and what is too much', () => {
    const account = (id: string, total: string, dueOn: string, paid: readonly string[]) => ({
      id,
      number: id,
      total,
      dueOn,
      credits: id === 'a' ? [{ id: 'c', number: 'C', amount: '20' }] : [],
      payments: paid.map((amount, at) => ({ id: `${id}-${at}`, label: 'paid', amount })),
    });
    const { owed, overdue, paid, overpaid, accounts } = statement(
      [
        account('a', '100', '2026-03-01', ['30']),
        account('b', '50', '2026-03-31', ['60', '-5']),
        account('c', '70', '2026-03-09', ['70']),
      ],
      'EUR',
      '2026-03-11',
    );
    expect([owed, overdue, paid].map(({ value }) => value.toString())).toEqual(['45', '50', '155']);
    expect(overpaid.value.toString()).toBe('0');
    expect(accounts.map(({ balance }) => balance.overpaid.value.toString())).toEqual(['0', '5', '0']);
    expect(accounts.map(({ daysOverdue }) => daysOverdue)).toEqual([10, 0, 0]);
  });
});
