import { describe, expect, it } from 'vitest';
import * as f from '../derive.ts';
import { type Figure, SHARE_BOUNDS } from '../figure.ts';
import { input } from '../input.ts';
import {
  Effort,
  Recalculation,
  recalculate,
  TooMuchWorkError,
  UnknownFigureError,
} from '../recalculation/index.ts';
import { sampleTable } from '../recalculation/sample-table.ts';
import { entered } from '../source.ts';
import { toTable } from '../table.ts';
import { type SensitivityRow, sensitivity } from './index.ts';

const leaf = (key: string, value: string, bounds = {}) =>
  input({ key, label: key, unit: 'ratio', value, source: entered(), bounds });
const tableOf = (total: Figure) => {
  const { ids, figures } = toTable({ total }, { withDerivations: true });
  return { id: ids.total, figures, sheet: new Recalculation(figures) };
};
const text = (row: SensitivityRow | undefined) =>
  row && [row.id, row.resultLow?.toString(), row.resultHigh?.toString(), row.swing?.toString()];

describe('sensitivity', () => {
  it('orders values by their swing, and works out only towards the result', () => {
    const { ids, figures } = sampleTable();
    const { result, rows, still } = sensitivity(new Recalculation(figures), {
      result: ids.cost,
      move: '0.1',
    });
    expect(result?.toString()).toBe('87');
    // By hand: timber 60 of 87. Yield 0.63 and 0.77: 42 / 0.63 = 66.67, 42 / 0.77 = 54.55. 2.16 to 2.64 packs: 3 each.
    expect(rows.map(({ id }) => id)).toEqual(['yield', 'board-price', 'need', 'pack-price', 'screws']);
    expect(text(rows[1])).toEqual(['board-price', '81', '93', '12']);
    expect(text(rows[4])).toEqual(['screws', '87', '87', '0']);
    expect(Number(rows[0]?.swing)).toBeCloseTo(42 / 0.63 - 42 / 0.77, 12);
    expect(still.every(({ why }) => why === 'definition')).toBe(true);
    expect(rows.some(({ id }) => id === 'shelf-price' || id === 'margin')).toBe(false);
  });

  it('comes to what the whole table worked out anew comes to', () => {
    const { ids, figures } = sampleTable();
    for (const row of sensitivity(new Recalculation(figures), { result: ids.price, move: '0.25' }).rows) {
      expect(row.resultLow?.toString()).toBe(
        recalculate(figures, { [row.id]: row.low })
          .get(ids.price)
          ?.toString(),
      );
      expect(row.resultHigh?.toString()).toBe(
        recalculate(figures, { [row.id]: row.high })
          .get(ids.price)
          ?.toString(),
      );
    }
  });

  it('keeps a share to what a share can be, and says so', () => {
    const { id, sheet } = tableOf(f.divide('total', leaf('need', '9'), leaf('yield', '0.9', SHARE_BOUNDS)));
    const [need, kept] = sensitivity(sheet, { result: id, move: '0.5' }).rows.toSorted((a, b) =>
      a.id < b.id ? -1 : 1,
    );
    expect(need?.keptAt).toEqual([]);
    expect([kept?.low.toString(), kept?.high.toString(), kept?.keptAt]).toEqual(['0.45', '1', ['high']]);
    expect(text(kept)).toEqual(['yield', '20', '9', '11']);
  });

  it('leaves out and names what is 0, what counts things and what is so by definition', () => {
    const total = f.sum('total', 'ratio', [
      leaf('nothing', '0'),
      leaf('legs', '4', { isWhole: true }),
      f.scale('twice', leaf('a', '-3'), f.number(2)),
    ]);
    const { id, sheet } = tableOf(total);
    const { rows, still } = sensitivity(sheet, { result: id, move: '0.1' });
    expect(rows.map(text)).toEqual([['a', '-2.6', '-1.4', '1.2']]);
    expect(Object.fromEntries(still.map(({ id: name, why }) => [name, why]))).toMatchObject({
      nothing: 'zero',
      legs: 'whole',
    });
    expect(still.filter(({ why }) => why === 'definition')).toHaveLength(1);
  });

  it('takes ranges of their own, and a three-point estimate as one', () => {
    const mean = f.divide(
      'time',
      f.sum('sum', 'ratio', [
        leaf('low', '5'),
        f.scale('four', leaf('likely', '8'), f.number(4)),
        leaf('high', '14'),
      ]),
      f.number(6),
    );
    const { sheet, id, figures } = tableOf(f.scale('total', mean, leaf('rate', '10')));
    const meanId = Object.values(figures).find(({ label }) => label === 'time')?.id ?? '';
    const byShare = sensitivity(sheet, { result: id, move: '0.1' }).rows;
    expect(byShare.map(text).toSorted()).toEqual(
      [
        ['rate', '76.5', '93.5', '17'],
        [meanId, '76.5', '93.5', '17'],
      ].toSorted(),
    );
    const own = sensitivity(sheet, {
      result: id,
      move: '0.1',
      usesThreePoints: true,
      ranges: { rate: { low: 9, high: 12 } },
    });
    expect(own.rows.map((row) => [...(text(row) ?? []), row.by])).toEqual([
      [meanId, '50', '140', '90', 'range'],
      ['rate', '76.5', '102', '25.5', 'range'],
    ]);
  });

  it('names the figure that has no answer at an end', () => {
    const { id, sheet } = tableOf(f.divide('total', leaf('a', '9'), f.complement('1 - m', leaf('m', '0.5'))));
    const [, last] = sensitivity(sheet, { result: id, move: '1' }).rows;
    expect([last?.id, last?.resultHigh, last?.swing, last?.faults[0]?.label]).toEqual([
      'm',
      null,
      null,
      'total',
    ]);
  });

  it('refuses leaves the result does not rest on, and more work than it is allowed', () => {
    const { ids, figures } = sampleTable();
    const sheet = new Recalculation(figures, new Effort(60));
    expect(() => sensitivity(sheet, { result: ids.cost, move: '0.1', leaves: ['shelf-price'] })).toThrow(
      UnknownFigureError,
    );
    expect(() => sensitivity(sheet, { result: 'gone', move: '0.1' })).toThrow(UnknownFigureError);
    expect(() => sensitivity(sheet, { result: ids.price, move: '0.1' })).toThrow(TooMuchWorkError);
  });
});
