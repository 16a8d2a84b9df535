import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as f from '../derive.ts';
import { COUNT_BOUNDS, type Figure, SHARE_BOUNDS } from '../figure.ts';
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
import { type SolveQuestion, solve } from './index.ts';

const leaf = (key: string, value: string, bounds = {}) =>
  input({ key, label: key, unit: 'ratio', value, source: entered(), bounds });

function solved(
  total: Figure,
  question: Partial<SolveQuestion> & Pick<SolveQuestion, 'leaf' | 'target'>,
  other: Figure = leaf('apart', '1'),
) {
  const { ids, figures } = toTable({ total, other }, { withDerivations: true });
  return { ...solve(new Recalculation(figures), { result: ids.total, ...question }), figures, ids };
}
const values = ({ crossings }: { crossings: readonly { at: { value: unknown } }[] }) =>
  crossings.map(({ at }) => String(at.value));

describe('solving for a leaf', () => {
  it('comes to the very value where the result is a straight line of it', () => {
    const total = f.sum('t', 'ratio', [
      f.scale('x', leaf('hours', '3'), leaf('rate', '7')),
      leaf('rest', '11'),
    ]);
    const found = solved(total, { leaf: 'hours', target: { value: 200 } });
    expect(values(found)).toEqual(['27']);
    expect([found.crossings[0]?.at.gap?.toString(), found.why, found.course]).toEqual(['0', null, 'rises']);
    expect(found.now.result?.toString()).toBe('32');
  });

  it('gives back a value that was hidden, and the table worked out anew agrees', () => {
    const { ids, figures } = sampleTable();
    fc.assert(
      fc.property(
        fc.integer({ min: 31, max: 99 }).map((n) => `${n / 100}`),
        (hidden) => {
          const target = recalculate(figures, { yield: hidden }).get(ids.cost) ?? 0;
          const { crossings } = solve(new Recalculation(figures), {
            leaf: 'yield',
            result: ids.cost,
            target: { value: target },
          });
          const value = crossings[0]?.at.value ?? 0;
          expect(Number(value)).toBeCloseTo(Number(hidden), 12);
          expect(Number(recalculate(figures, { yield: value }).get(ids.cost))).toBeCloseTo(Number(target), 9);
        },
      ),
      { numRuns: 20 },
    );
  });

  it('lists both roots of a quadratic', () => {
    // x^2 - 10 x + 21 = (x - 3)(x - 7).
    const x = leaf('x', '1');
    const total = f.difference('t', f.scale('square', x, x), f.scale('ten', x, f.number(10)));
    const found = solved(total, { leaf: 'x', target: { value: -21 } });
    expect(values(found)).toEqual(['3', '7']);
    expect(found.course).toBe('both-ways');
  });

  it('finds an irrational root as closely as it says', () => {
    const x = leaf('x', '1');
    const { crossings } = solved(f.scale('square', x, x), { leaf: 'x', target: { value: 2 } });
    expect(crossings[0]?.at.value.toFixed(15)).toBe(Math.SQRT2.toFixed(15));
    expect(Number(crossings[0]?.at.gap?.abs())).toBeLessThan(1e-12);
  });

  it('finds where two ways come to the same', () => {
    const pieces = leaf('pieces', '4');
    const make = f.sum('make', 'ratio', [leaf('jig', '120'), f.scale('run', leaf('each', '14'), pieces)]);
    const buy = f.scale('buy', leaf('offer', '22'), pieces);
    const { ids, figures } = toTable({ make, buy }, { withDerivations: true });
    const { crossings } = solve(new Recalculation(figures), {
      leaf: 'pieces',
      result: ids.make,
      target: { figure: ids.buy },
    });
    // 120 = 8 n.
    expect(crossings.map(({ at }) => [at.value, at.result, at.target].map(String))).toEqual([
      ['15', '330', '330'],
    ]);
  });

  it('says from where to where a rounded result stays the same', () => {
    const { ids, figures } = sampleTable();
    const { crossings } = solve(new Recalculation(figures), {
      leaf: 'screws',
      result: ids.cost,
      target: { value: 96 },
    });
    // Four packs of 50: above 150 screws, up to 200.
    expect(Number(crossings[0]?.from)).toBeCloseTo(150, 6);
    expect(Number(crossings[0]?.to)).toBeCloseTo(200, 6);
    expect(
      recalculate(figures, { screws: crossings[0]?.at.value ?? 0 })
        .get(ids.cost)
        ?.toString(),
    ).toBe('96');
  });
});

describe('no value', () => {
  it('is an answer: it steps over the target, with the values on both sides', () => {
    const { ids, figures } = sampleTable();
    const found = solve(new Recalculation(figures), {
      leaf: 'screws',
      result: ids.cost,
      target: { value: 100 },
    });
    expect([found.crossings, found.why]).toEqual([[], 'steps-over']);
    const [step] = found.steps;
    expect([step?.below.result, step?.above.result].map(String)).toEqual(['96', '105']);
    expect(Number(step?.above.value.minus(step.below.value))).toBeLessThan(1e-6);
    expect(Number(step?.below.value)).toBeCloseTo(200, 6);
  });

  it('is an answer for what is counted: the two neighbours', () => {
    const total = f.scale('t', leaf('pieces', '2', COUNT_BOUNDS), f.number(7));
    const found = solved(total, { leaf: 'pieces', target: { value: 100 } });
    expect([found.why, String(found.steps[0]?.below.value), String(found.steps[0]?.above.value)]).toEqual([
      'steps-over',
      '14',
      '15',
    ]);
    expect(values(solved(total, { leaf: 'pieces', target: { value: 98 } }))).toEqual(['14']);
  });

  it('is an answer: never reached within what a share can be, or the bounds stated', () => {
    const total = f.divide('t', leaf('need', '5'), leaf('yield', '0.5', SHARE_BOUNDS));
    const found = solved(total, { leaf: 'yield', target: { value: 4 } });
    expect([found.why, found.course, String(found.least?.value), String(found.least?.result)]).toEqual([
      'never-reaches',
      'falls',
      '1',
      '5',
    ]);
    const near = solved(total, { leaf: 'need', target: { value: 100 }, low: 0, high: 20 });
    expect([near.why, String(near.searched.high), String(near.greatest?.result)]).toEqual([
      'never-reaches',
      '20',
      '40',
    ]);
  });

  it('is an answer: the result does not follow the leaf, or is nowhere', () => {
    const apart = solved(
      leaf('a', '3'),
      { leaf: 'b', target: { value: 4 } },
      f.scale('b2', leaf('b', '1'), f.number(1)),
    );
    expect(apart.why).toBe('does-not-move');
    const { ids, figures } = toTable(
      { t: f.divide('t', leaf('a', '1'), leaf('b', '1')) },
      { withDerivations: true },
    );
    const zero = {
      ...figures,
      b: { id: 'b', label: 'b', unit: 'ratio' as const, currency: null, value: '0' },
    };
    const nothing = solve(new Recalculation(zero), { leaf: 'a', result: ids.t, target: { value: 4 } });
    expect(nothing.why).toBe('no-answer');
  });

  it('is not made of a division by what goes through 0', () => {
    const total = f.divide('t', f.number(1), f.difference('x - 2', leaf('x', '1'), f.number(2)));
    const found = solved(total, { leaf: 'x', target: { value: 0 } });
    expect([found.crossings, found.steps, found.why]).toEqual([[], [], 'never-reaches']);
  });
});

it('refuses what is no leaf, and more work than it is allowed', () => {
  const { ids, figures } = sampleTable();
  const question = { leaf: 'yield', result: ids.price, target: { value: 99 } };
  expect(() => solve(new Recalculation(figures), { ...question, leaf: ids.cost })).toThrow(
    UnknownFigureError,
  );
  expect(() => solve(new Recalculation(figures, new Effort(100)), question)).toThrow(TooMuchWorkError);
});
