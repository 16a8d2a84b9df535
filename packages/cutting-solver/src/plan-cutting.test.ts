import {
  type CuttingInstance,
  checkPlan,
  createSeededGenerator,
  planCutting,
  type SearchProgress,
} from '@scantling/cutting';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadSolver } from './highs-solver.ts';

const solver = await loadSolver();

/** A clock that stands still: only the work counted ends the search. */
const plan = (instance: CuttingInstance, effort = 0.1, onProgress?: (progress: SearchProgress) => void) =>
  planCutting(instance, {
    solver,
    random: createSeededGenerator(1),
    limits: { effort, mostMs: 600_000, clock: () => 0, ...(onProgress === undefined ? {} : { onProgress }) },
  });

const bench: CuttingInstance = {
  kind: '1d',
  kerf: '3.2',
  stock: [
    { id: 'ash-1800', length: 1800, cost: '13.60' },
    { id: 'ash-2400', length: 2400, cost: '17.20' },
    { id: 'rest', length: 910, cost: 0, available: 2, offcut: true },
  ],
  parts: [
    { id: 'leg', length: 445, quantity: 8 },
    { id: 'rail', length: 862, quantity: 4 },
    { id: 'slat', length: 1180, quantity: 5 },
  ],
};

const shelves: CuttingInstance = {
  kind: '2d-guillotine',
  kerf: 3,
  trim: 6,
  stock: [
    { id: 'ply-2500', length: 2500, width: 1250, cost: 79 },
    { id: 'ply-1525', length: 1525, width: 1525, cost: 54 },
    { id: 'rest', length: 880, width: 410, cost: 0, available: 1, offcut: true },
  ],
  parts: [
    { id: 'shelf', length: 880, width: 240, quantity: 9 },
    { id: 'upright', length: 1420, width: 240, quantity: 4 },
    { id: 'rail', length: 844, width: 90, quantity: 6, rotatable: true },
  ],
};

describe('sticks', () => {
  it('come at the least cost, proven, rests first', () => {
    const found = plan(bench);
    expect(found.status).toBe('optimal');
    expect(found.endedBy).toBe('proof');
    expect(checkPlan(bench, found)).toEqual([]);
    expect(found.layouts.filter(({ stock }) => stock === 'rest').length).toBeGreaterThan(0);
  });

  it('cost no more with one more stock to choose from', () => {
    const fewer = plan({ ...bench, stock: bench.stock.slice(0, 2) });
    expect(Number(plan(bench).cost)).toBeLessThan(Number(fewer.cost));
  });

  it('are as good as trying everything', () => {
    // By hand: 7 + 3 and 6 + 4 fill two sticks of 10 exactly; any other pairing needs three.
    const instance: CuttingInstance = {
      kind: '1d',
      kerf: 0,
      stock: [{ id: 'bar', length: 10, cost: 1 }],
      parts: [7, 6, 4, 3].map((length) => ({ id: `p${length}`, length, quantity: 1 })),
    };
    expect(plan(instance)).toMatchObject({ status: 'optimal', cost: '2', gap: '0' });
  });

  it('that do not go round are refused', () => {
    const stock = [{ id: 'bar', length: 1000, cost: 1, available: 2 }];
    const parts = [{ id: 'rail', length: 600, quantity: 3 }];
    expect(() => plan({ kind: '1d', kerf: 0, stock, parts })).toThrow(
      expect.objectContaining({ code: 'cutting-impossible', field: 'stock' }),
    );
  });

  it('of few kinds are taken where that is worth more than what it costs', () => {
    const kinds = (price: string) => {
      const found = plan({ ...bench, preferences: { pricePerKindOfStock: price } });
      return new Set(found.layouts.map(({ stock }) => stock)).size;
    };
    expect(kinds('100')).toBe(1);
    expect(kinds('100')).toBeLessThan(kinds('0'));
  });

  it('leave offcuts together where long ones are worth something', () => {
    const instance: CuttingInstance = {
      kind: '1d',
      kerf: 0,
      stock: [{ id: 'bar', length: 1000, cost: 10 }],
      parts: [{ id: 'peg', length: 250, quantity: 6 }],
    };
    const usableOffcuts = { leastLength: 400, worth: '0.004' };
    const found = plan({ ...instance, preferences: { usableOffcuts } });
    // Four and two pegs leave one offcut of 500; three and three would leave two of 250.
    expect(found).toMatchObject({ cost: '20', weighed: '18' });
    expect(found.layouts.flatMap(({ offcuts }) => offcuts.map(({ length }) => length))).toEqual(['500']);
  });
});

describe('sheets', () => {
  it('are planned, checked, with a bound', () => {
    const found = plan(shelves, 0.3);
    expect(checkPlan(shelves, found)).toEqual([]);
    expect(Number(found.bound)).toBeGreaterThan(0);
    expect(Number(found.cost)).toBeGreaterThanOrEqual(Number(found.bound));
  });

  it('keep to stages and the way of the first cuts', () => {
    const stand: CuttingInstance = {
      ...shelves,
      stages: 2,
      firstCut: 'crosscut',
      parts: shelves.parts.map((part) => ({ ...part, rotatable: false })),
    };
    expect(checkPlan(stand, plan(stand))).toEqual([]);
  });

  it('fit wherever they fit by their area alone', () => {
    // Eight parts of a quarter: two whole sheets, which no search may miss.
    const instance: CuttingInstance = {
      kind: '2d-guillotine',
      kerf: 4,
      stock: [{ id: 'ply', length: 1004, width: 604, cost: 1 }],
      parts: [{ id: 'panel', length: 500, width: 300, quantity: 8 }],
    };
    expect(plan(instance)).toMatchObject({ status: 'optimal', cost: '2' });
  });

  it('pass their check whatever is asked', () => {
    const part = fc.record({
      length: fc.integer({ min: 5, max: 60 }),
      width: fc.integer({ min: 5, max: 40 }),
      quantity: fc.integer({ min: 1, max: 6 }),
      rotatable: fc.boolean(),
    });
    const asked = fc.record({
      kerf: fc.integer({ min: 0, max: 3 }),
      stages: fc.option(fc.integer({ min: 2, max: 4 }), { nil: undefined }),
      firstCut: fc.constantFrom('crosscut' as const, 'rip' as const),
      parts: fc.array(part, { minLength: 1, maxLength: 6 }),
    });
    fc.assert(
      fc.property(asked, ({ kerf, stages, firstCut, parts }) => {
        const instance: CuttingInstance = {
          kind: '2d-guillotine',
          kerf,
          ...(stages === undefined ? {} : { stages, firstCut }),
          stock: [
            { id: 'large', length: 100, width: 60, cost: 10 },
            { id: 'small', length: 63, width: 43, cost: '4.5', available: 2 },
          ],
          parts: parts.map((one, index) => ({ id: `p${index}`, ...one })),
        };
        // A plan that does not hold is thrown as an error of its own.
        expect(Number(plan(instance, 0.002).gap)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the search', () => {
  it('gives the same plan for the same question', () => {
    expect(plan(shelves)).toEqual(plan(shelves));
    expect(plan(bench)).toEqual(plan(bench));
  });

  it('tells how far it has come: costs fall, bounds rise', () => {
    const heard: SearchProgress[] = [];
    const found = plan(shelves, 0.1, (progress) => heard.push(progress));
    const costs = heard.flatMap(({ cost }) => (cost === null ? [] : [Number(cost)]));
    const bounds = heard.map(({ bound }) => Number(bound));
    expect(costs).toEqual([...costs].sort((a, b) => b - a));
    expect(bounds).toEqual([...bounds].sort((a, b) => a - b));
    expect(costs.at(-1)).toBe(Number(found.cost));
  });

  it('ends when it is called off', () => {
    const limits = { effort: 1, mostMs: 600_000, clock: () => 0, isCancelled: () => true };
    expect(() => planCutting(shelves, { solver, random: createSeededGenerator(1), limits })).toThrow(
      expect.objectContaining({ code: 'cutting-cancelled' }),
    );
  });

  it('says that the clock ended it', () => {
    let now = 0;
    const limits = { effort: 1000, mostMs: 400, clock: () => (now += 1) };
    const found = planCutting(shelves, { solver, random: createSeededGenerator(1), limits });
    expect(found.status === 'optimal' ? 'clock' : found.endedBy).toBe('clock');
  });

  it('chooses the most valuable parts from limited stock', () => {
    const instance: CuttingInstance = {
      kind: '1d',
      objective: 'max-value',
      kerf: 1,
      stock: [{ id: 'bar', length: 11, cost: 3, available: 1 }],
      parts: [
        { id: 'long', length: 7, quantity: 1, value: 8 },
        { id: 'short', length: 5, quantity: 3, value: 5 },
      ],
    };
    // Two short ones and the cut between fill the bar: worth 10, more than the long one.
    expect(plan(instance)).toMatchObject({ status: 'optimal', value: '10', bound: '10', cost: '3' });
  });
});
