import type { FigureNode, FigureTable } from '@scantling/figures';
import { describe, expect, it } from 'vitest';
import { type MovesRow, movesShape } from './moves-shape.ts';
import { barWords, boundWords, headline, type MovesVoice } from './moves-words.ts';

const money = (id: string, value: string, label = id): FigureNode => ({
  id,
  label,
  unit: 'money',
  currency: 'USD',
  value,
});

function rowOf(figure: string, [low, high]: readonly [string | null, string | null]): MovesRow {
  return {
    figure,
    by: 'share',
    low: `${figure}/low`,
    high: `${figure}/high`,
    keptAt: [],
    resultLow: low === null ? null : `${figure}/result-low`,
    resultHigh: high === null ? null : `${figure}/result-high`,
    swing: null,
    faults: [],
  };
}

/** Rows with the results at their ends, in a table with a result of 100. */
function made(ends: Readonly<Record<string, readonly [string | null, string | null]>>) {
  const rows = Object.entries(ends).map(([figure, both]) => rowOf(figure, both));
  const nodes = Object.entries(ends).flatMap(([figure, [low, high]]) => [
    { ...money(figure, '10'), source: { kind: 'entered', text: 'entered by hand' } as const },
    money(`${figure}/low`, '9'),
    money(`${figure}/high`, '11'),
    money(`${figure}/result-low`, low ?? '0'),
    money(`${figure}/result-high`, high ?? '0'),
  ]);
  const table: FigureTable = Object.fromEntries(
    [...nodes, money('price', '100')].map((node) => [node.id, node]),
  );
  return { rows, table };
}

describe('the shape of what moves a result', () => {
  it('draws every bar from the result now, to one scale', () => {
    const { rows, table } = made({ timber: ['80', '120'], glue: ['95', '105'] });
    const { now, bars } = movesShape(table, 'price', rows);
    expect(now).toBe(50);
    const [timber, glue] = bars;
    expect([timber?.low.left, timber?.low.width, timber?.high.left]).toEqual([16, 34, 50]);
    expect(glue?.high.width).toBeCloseTo((timber?.high.width ?? 0) / 4, 10);
    expect([timber?.low.isRight, timber?.high.isRight, timber?.high.difference]).toEqual([false, true, '20']);
  });

  it('sees a value that goes the other way, both ends on one side, nothing moved, and no answer', () => {
    const { rows, table } = made({
      yield: ['110', '92'],
      packs: ['103', '101'],
      screws: ['100', '100'],
      margin: ['90', null],
    });
    const { bars, level, broken } = movesShape(table, 'price', rows);
    expect(bars.map(({ isOneSided }) => isOneSided)).toEqual([false, true]);
    expect([bars[0]?.low.isRight, bars[0]?.high.isRight]).toEqual([true, false]);
    expect(level.map(({ figure }) => figure)).toEqual(['screws']);
    expect(broken.map(({ figure }) => figure)).toEqual(['margin']);
  });

  it('keeps every bar inside the width, whatever the ends', () => {
    const { rows, table } = made({ a: ['100', '900'], b: ['99.5', '100'] });
    for (const { low, high } of movesShape(table, 'price', rows).bars)
      for (const { left, width } of [low, high]) {
        expect(left).toBeGreaterThanOrEqual(16);
        expect(left + width).toBeLessThanOrEqual(84.001);
      }
  });
});

describe('the words of what moves a result', () => {
  const { rows, table } = made({ timber: ['80', '120'], yield: ['110', '92'] });
  const voice: MovesVoice = {
    table,
    now: money('price', '100'),
    name: 'netPrice',
    system: 'metric',
    locale: 'en-US',
  };

  it('say what moves it most, and which way', () => {
    expect(headline(voice, rows)).toBe(
      '“timber” moves the net price most: at $11.00 instead of $10.00, the net price is $20.00 higher. Next comes “yield”.',
    );
    expect(headline(voice, rows.slice(1))).toMatch(/is \$8\.00 lower\.$/);
    expect(headline(voice, [])).toMatch(/^Nothing moves the net price/);
  });

  it('say both ends of a bar, and what was bounded', () => {
    const [timber] = rows;
    if (timber === undefined) throw new Error('a row is made above');
    expect(barWords(voice, timber)).toBe(
      'timber: at $9.00 the net price is $80.00, at $11.00 it is $120.00; working',
    );
    expect(boundWords(voice, timber)).toBe('');
    expect(boundWords(voice, { ...timber, keptAt: ['high'] })).toBe('kept at $11.00, the most it can be');
  });
});
