import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LineToWrite, paperLines } from './paper-line-table.ts';
import { paperWriters } from './paper-style.ts';

const writers = paperWriters({ locale: 'en-US', currency: 'USD', lengths: 'imperial' });
const line = (amount: string, more: Partial<LineToWrite> = {}): LineToWrite => ({
  description: 'Stool',
  quantity: '1',
  unitPrice: amount,
  amount,
  ...more,
});

describe('the table of lines', () => {
  it('numbers through its groups, alternates by letter', () => {
    const { groups } = paperLines(
      [
        { lines: [line('100'), line('50')] },
        { heading: 'Nothing here', lines: [] },
        { heading: 'Wood', areAlternates: true, lines: [line('10'), line('20', { isCounted: false })] },
        { heading: 'Options', lines: [line('5', { isCounted: false })] },
      ],
      writers,
    );
    expect(groups.map(({ lines }) => lines.map(({ position }) => position))).toEqual([
      ['1', '2'],
      ['3a', '3b'],
      ['4'],
    ]);
    expect(groups.map(({ lines }) => lines.map(({ carried }) => carried))).toEqual([
      ['$100.00', '$150.00'],
      ['$160.00', null],
      [null],
    ]);
  });

  it('goes on after z with two letters', () => {
    const lines = Array.from({ length: 28 }, () => line('1'));
    const { groups } = paperLines([{ areAlternates: true, lines }], writers);
    expect(groups[0]?.lines.slice(24).map(({ position }) => position)).toEqual(['1y', '1z', '1aa', '1ab']);
  });

  it('carries over the sum of what is counted', () => {
    const cents = fc.array(
      fc.record({ cents: fc.integer({ min: -99_999, max: 999_999 }), isCounted: fc.boolean() }),
      {
        minLength: 1,
      },
    );
    fc.assert(
      fc.property(cents, (given) => {
        const lines = given.map(({ cents: value, isCounted }) =>
          line((value / 100).toFixed(2), { isCounted }),
        );
        const last = paperLines([{ lines }], writers).groups[0]?.lines.findLast(
          ({ carried }) => carried !== null,
        );
        const sum = given.reduce((all, { cents: value, isCounted }) => all + (isCounted ? value : 0), 0);
        expect(last?.carried ?? writers.money(0)).toBe(writers.money((sum / 100).toFixed(2)));
      }),
    );
  });

  it('leaves out the columns of money where there is none', () => {
    const { heads, groups } = paperLines(
      [{ lines: [{ description: 'Bench', quantity: '2 pieces' }] }],
      writers,
    );
    expect([heads.unitPrice, heads.amount, groups[0]?.lines[0]?.carried]).toEqual([null, null, null]);
  });
});
