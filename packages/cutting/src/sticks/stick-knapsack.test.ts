import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CoarseKnapsack } from './coarse-knapsack.ts';
import { StickBranching } from './stick-branching.ts';
import { StickKnapsack } from './stick-knapsack.ts';

/** Every choice there is, one after the other. */
function mostByTrying(
  lengths: number[],
  values: number[],
  most: number[],
  capacity: number,
  part = 0,
): number {
  if (part === lengths.length) return 0;
  let best = 0;
  for (let times = 0; times <= (most[part] ?? 0) && times * (lengths[part] ?? 0) <= capacity; times += 1) {
    const rest = mostByTrying(lengths, values, most, capacity - times * (lengths[part] ?? 0), part + 1);
    best = Math.max(best, times * (values[part] ?? 0) + rest);
  }
  return best;
}

const cases = fc.record({
  parts: fc.array(
    fc.record({
      length: fc.integer({ min: 1, max: 20 }),
      value: fc.integer({ min: 0, max: 30 }),
      most: fc.integer({ min: 0, max: 4 }),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  capacity: fc.integer({ min: 1, max: 40 }),
});

describe('the knapsack of a stick', () => {
  it('finds what trying every choice finds, by table and by branching', () => {
    fc.assert(
      fc.property(cases, ({ parts, capacity }) => {
        const lengths = parts.map(({ length }) => length);
        const values = parts.map(({ value }) => value);
        const most = parts.map((part) => part.most);
        const best = mostByTrying(lengths, values, most, capacity);
        const table = new StickKnapsack(lengths, 40);
        table.setValues(Float64Array.from(values), most);
        const filling = table.fill(capacity, 0);
        expect(filling.most).toBe(best);
        const used = lengths.reduce((sum, length, part) => sum + length * (filling.counts[part] ?? 0), 0);
        const worth = values.reduce((sum, value, part) => sum + value * (filling.counts[part] ?? 0), 0);
        expect(worth).toBe(best);
        expect(used).toBeLessThanOrEqual(capacity);
        expect(most.every((number, part) => (filling.counts[part] ?? 0) <= number)).toBe(true);
        const branching = new StickBranching(lengths);
        branching.setValues(Float64Array.from(values), most);
        expect(branching.fill(capacity, 0)).toMatchObject({ value: best, most: best, isProven: true });
      }),
      { numRuns: 300 },
    );
  });

  it('on a coarse scale finds only what fits', () => {
    const lengths = Array.from({ length: 400 }, (_, part) => 10_007 + part * 61);
    const knapsack = new CoarseKnapsack(lengths, 100_000);
    knapsack.setValues(
      Float64Array.from(lengths),
      lengths.map(() => 1),
    );
    const { counts, value } = knapsack.fill(100_000);
    const used = lengths.reduce((sum, length, part) => sum + length * (counts[part] ?? 0), 0);
    expect(used).toBeLessThanOrEqual(100_000);
    expect(value).toBe(used);
    expect(used).toBeGreaterThan(99_000);
  });
});
