import { decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import * as f from '../derive.ts';
import type { Figure } from '../figure.ts';
import { input } from '../input.ts';
import { Recalculation, recalculate, TooMuchWorkError } from '../recalculation/index.ts';
import { sampleTable } from '../recalculation/sample-table.ts';
import { entered } from '../source.ts';
import { type FigureTable, toTable } from '../table.ts';
import { COLUMN_OPERATIONS } from './column-operations.ts';
import {
  type Estimate,
  RiskInputError,
  type RiskQuestion,
  type RiskResult,
  type Spread,
  simulate,
  spreadMean,
  spreadQuantiles,
  spreadVariance,
} from './index.ts';

const leaf = (key: string, value: string) =>
  input({ key, label: key, unit: 'ratio', value, source: entered() });
const hours = (key: string, value: string) => input({ key, label: key, unit: 'h', value, source: entered() });
const ASKED = {
  uncertain: {},
  usesThreePoints: true,
  shape: 'pert',
  doHoursMoveTogether: true,
  samples: 20_000,
  seed: 7,
} as const;

function ask(figures: FigureTable, result: string, more: Partial<RiskQuestion>) {
  const { results, ...risk } = simulate(new Recalculation(figures), { ...ASKED, ...more, results: [result] });
  const [found] = results as [RiskResult];
  if (found.statistics === null) throw new Error('no sample has an answer');
  return { ...risk, ...found, statistics: found.statistics };
}
function simulated(total: Figure, uncertain: Record<string, Estimate>, more: Partial<RiskQuestion> = {}) {
  const { ids, figures } = toTable({ total }, { withDerivations: true });
  return ask(figures, ids.total, { uncertain, ...more });
}
const spread = (low: number, likely: number, high: number, shape: 'pert' | 'triangular') => ({
  low: decimal(low),
  likely: decimal(likely),
  high: decimal(high),
  shape,
});

const quantileOf = (of: Spread, share: number) => spreadQuantiles(of, [share])[0] ?? Number.NaN;

describe('a simulation of one value', () => {
  it.each([
    ['pert', 5, 8, 14],
    ['pert', 0, 0, 10],
    ['pert', 10, 15, 26],
    ['triangular', 5, 8, 14],
    ['triangular', 3, 9, 9],
  ] as const)('has mean and variance of the closed form: %s %d %d %d', (shape, low, likely, high) => {
    const { statistics } = simulated(leaf('x', '1'), { x: { low, likely, high, shape } });
    const wanted = spread(low, likely, high, shape);
    const sd = Math.sqrt(spreadVariance(wanted).toNumber());
    // The mean of so many samples is off by sd / sqrt(n); four times that happens once in 16,000 seeds.
    expect(Math.abs(statistics.mean - spreadMean(wanted).toNumber())).toBeLessThan(
      (4 * sd) / Math.sqrt(20_000),
    );
    expect(Math.abs(statistics.sd / sd - 1)).toBeLessThan(0.02);
    for (const share of [0.1, 0.5, 0.8, 0.9])
      expect(Math.abs(statistics.percentile(share) - quantileOf(wanted, share))).toBeLessThan(0.05 * sd);
  });
});

describe('a simulation of a sum', () => {
  const total = f.sum('total', 'ratio', [leaf('a', '8'), leaf('b', '8'), leaf('c', '5')]);
  const each = (group: string | null) => ({
    a: { low: 5, likely: 8, high: 14, group },
    b: { low: 2, likely: 3, high: 9, group },
  });

  it('adds variances where values are independent, and percentiles where they move together', () => {
    const [a, b] = [spread(5, 8, 14, 'pert'), spread(2, 3, 9, 'pert')];
    const apart = simulated(total, each(null));
    expect(apart.statistics.sd).toBeCloseTo(
      Math.sqrt(spreadVariance(a).plus(spreadVariance(b)).toNumber()),
      1,
    );
    const together = simulated(total, each('weather'));
    for (const share of [0.1, 0.5, 0.9])
      expect(
        Math.abs(together.statistics.percentile(share) - (quantileOf(a, share) + quantileOf(b, share) + 5)),
      ).toBeLessThan(0.08);
    expect(together.statistics.sd).toBeGreaterThan(apart.statistics.sd * 1.2);
    expect(together.shares.map(({ name, isGroup, share }) => [name, isGroup, share > 0.97])).toEqual([
      ['weather', true, true],
    ]);
    expect(apart.shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 1);
    expect(Number(apart.atMeans)).toBeCloseTo(5 + 8.5 + 23 / 6, 10);
  });

  it('gives the same answer for the same seed, and another for another', () => {
    const means = [7, 7, 8].map((seed) => simulated(total, each(null), { seed }).statistics.mean);
    expect(means[0]).toBe(means[1]);
    expect(means[0]).not.toBe(means[2]);
  });
});

describe('a simulation of a sheet', () => {
  const time = (name: string) =>
    f.divide(
      `${name} mean`,
      f.sum('sum', 'h', [
        hours(`${name}/low`, '5'),
        f.scale('four', hours(`${name}/likely`, '8'), f.number(4)),
        hours(`${name}/high`, '14'),
      ]),
      f.number(6),
    );

  it('samples a three-point estimate once, as its mean, and hours together', () => {
    const { uncertain, statistics, shares } = simulated(
      f.sum('total', 'h', [time('saw'), time('plane')]),
      {},
    );
    expect(uncertain).toHaveLength(2);
    expect(statistics.mean).toBeCloseTo(17, 1);
    // Comonotone: the sd of the sum is the sum of both, sqrt(3.5 x 5.5 / 7) each.
    expect(statistics.sd).toBeCloseTo(2 * Math.sqrt((3.5 * 5.5) / 7), 1);
    expect(shares.map(({ name }) => name)).toEqual(['hours']);
    expect(() => simulated(time('saw'), { 'saw/likely': { low: 1, likely: 2, high: 3 } })).toThrow(
      RiskInputError,
    );
  });

  it('takes whole packs anew in every sample, which the means alone do not see', () => {
    const { ids, figures } = sampleTable();
    const { statistics, atMeans } = ask(figures, ids.cost, {
      uncertain: { screws: { low: 60, likely: 100, high: 180 } },
    });
    // Mean 106.67 screws are 3 packs; the samples need 2, 3 or 4.
    expect(atMeans?.toString()).toBe('87');
    expect([statistics.percentile(0), statistics.percentile(0.5), statistics.percentile(1)]).toEqual([
      78, 87, 96,
    ]);
    const { edges, counts, cumulative } = statistics.histogram;
    expect([edges.length - 1, counts.reduce((sum, count) => sum + count, 0), cumulative.at(-1)]).toEqual([
      counts.length,
      20_000,
      1,
    ]);
    expect(edges.every((edge) => edge.mod(edges[1]?.minus(edges[0] ?? 0) ?? 1).isZero())).toBe(true);
    const above = quantileOf(spread(60, 100, 180, 'pert'), 1 - statistics.shareAbove(78));
    expect(Math.abs(above - 100)).toBeLessThan(1.5);
  });

  it('works every operation out as the decimals do', () => {
    const { figures } = toTable(everyOperation(), { withDerivations: true });
    const wanted = recalculate(figures);
    const ids = Object.values(figures)
      .filter(({ how }) => how !== undefined)
      .map(({ id }) => id);
    const fixed = Object.fromEntries(
      ['a', 'b', 'm'].map((id) => [
        id,
        { low: figures[id]?.value ?? 0, likely: figures[id]?.value ?? 0, high: figures[id]?.value ?? 0 },
      ]),
    );
    const { results } = simulate(new Recalculation(figures), {
      ...ASKED,
      samples: 3,
      results: ids,
      uncertain: fixed,
    });
    for (const { id, statistics } of results)
      expect(statistics?.mean, id).toBeCloseTo(Number(wanted.get(id)), 9);
    const used = new Set(Object.values(figures).flatMap(({ how }) => how?.operation ?? []));
    expect([...used].sort()).toEqual(Object.keys(COLUMN_OPERATIONS).sort());
  });

  it('counts samples without an answer, and refuses what it cannot use', () => {
    const broken = f.divide('t', leaf('a', '1'), f.round('whole', leaf('b', '1'), 0));
    expect(simulated(broken, { b: { low: 0, likely: 1, high: 2 } }).withoutAnswer).toBeGreaterThan(100);
    expect(() => simulated(leaf('a', '1'), { a: { low: 3, likely: 2, high: 4 } })).toThrow('in this order');
    expect(() => simulated(leaf('a', '1'), {})).toThrow(RiskInputError);
    expect(() => simulated(leaf('a', '1'), { a: { low: 1, likely: 2, high: 3 } }, { samples: 2e9 })).toThrow(
      TooMuchWorkError,
    );
  });
});

function everyOperation(): Record<string, Figure> {
  const [a, b] = [leaf('a', '7.3'), leaf('b', '2.4')];
  const money = input({
    key: 'm',
    label: 'm',
    unit: 'money',
    value: '100.01',
    currency: 'EUR',
    source: entered(),
  });
  const shares = f.shareOut(['s1', 's2', 's3'], f.roundMoney('m2', money), [a, b, f.number(1)]);
  const made = {
    sum: f.sum('sum', 'ratio', [a, b, a]),
    difference: f.difference('difference', b, a),
    product: f.scale('product', a, b, a),
    quotient: f.share('quotient', a, b),
    least: f.least('least', a, b),
    greatest: f.greatest('greatest', a, b),
    up: f.roundUp('up', a, b),
    down: f.roundDown('down', a, b),
    round: f.round('round', a, 0),
    power: f.derive('power', 'ratio', 'power', [a, b]),
    logarithm: f.derive('logarithm', 'ratio', 'logarithm', [a, b]),
    reached: f.choose('reached', a, b, a, b),
    below: f.choose('below', b, a, a, b),
    same: f.named('same', a),
  };
  return { ...made, ...Object.fromEntries(shares.map((share, at) => [`share${at}`, share])) };
}
