import type { WorkedMachineHourRate } from '@scantling/contracts';
import { expect, test } from 'vitest';
import { rateRows } from './rate-rows.ts';

function rate(
  basis: WorkedMachineHourRate['basis'],
  lines: readonly (readonly [id: string, group: 'owning' | 'running'])[],
): WorkedMachineHourRate {
  const id = (name: string) => `${basis}/${name}`;
  return {
    basis,
    lines: lines.map(([line, group]) => ({
      id: line,
      kind: 'power',
      group,
      label: `Saw: ${line}`,
      perHour: id(line),
      perYear: id(`${line}-year`),
    })),
    averageInvestment: basis === 'marginal' ? null : id('investment'),
    life: null,
    owningPerYear: id('owning-per-year'),
    owningPerHour: id('owning-per-hour'),
    runningPerHour: id('running-per-hour'),
    perHour: id('per-hour'),
  };
}

test('lines stand once, under their group, with a figure only on the bases that know them', () => {
  const rows = rateRows(
    [
      rate('book', [
        ['depreciation', 'owning'],
        ['power', 'running'],
      ]),
      rate('marginal', [
        ['power', 'running'],
        ['cutters', 'running'],
        // Hours wear a tool out, so a part of this comes with another hour too.
        ['depreciation', 'running'],
      ]),
    ],
    'Saw',
  );
  expect(rows.map(({ id }) => id)).toEqual([
    'owning/depreciation',
    'owning',
    'running/power',
    'running/cutters',
    'running/depreciation',
    'running',
    'per-hour',
    'owning-per-year',
    'investment',
  ]);
  expect(rows.find(({ id }) => id === 'owning/depreciation')?.figures).toEqual({ book: 'book/depreciation' });
  expect(rows.find(({ id }) => id === 'running/power')).toMatchObject({
    label: 'Power',
    isTotal: false,
    isHourly: true,
    figures: { book: 'book/power', marginal: 'marginal/power' },
  });
  expect(rows.find(({ id }) => id === 'investment')?.figures).toEqual({ book: 'book/investment' });
});

test('a row no basis has a figure for is left out', () => {
  expect(rateRows([rate('marginal', [])], 'Saw').map(({ id }) => id)).not.toContain('life');
});
