import { describe, expect, it } from 'vitest';
import type { CuttingInstance } from '../instance/cutting-instance.ts';
import { readInstance } from '../instance/exact-instance.ts';
import { GuillotineValues } from './guillotine-values.ts';
import { reachableSums } from './reachable-sums.ts';

describe('the sums that parts reach', () => {
  it('keep to how many there are', () => {
    const sizes = [
      { size: 3, most: 2 },
      { size: 5, most: 1 },
    ];
    expect([...reachableSums(sizes, 12)]).toEqual([0, 3, 5, 6, 8, 11]);
  });
});

describe('the most a sheet is worth', () => {
  const instance: CuttingInstance = {
    kind: '2d-guillotine',
    objective: 'max-value',
    kerf: 0,
    stock: [{ id: 'ply', length: 100, width: 100, cost: 1, available: 1 }],
    parts: [
      { id: 'arm', length: 60, width: 40, quantity: 4, rotatable: true, value: 24 },
      { id: 'hub', length: 20, width: 20, quantity: 9, value: 4 },
    ],
  };

  it('is worked out by cuts from edge to edge', () => {
    const exact = readInstance(instance);
    const values = new GuillotineValues(exact, 1e7);
    values.setValues([24, 4]);
    // Two arms in a 60 x 100 row leave 60 x 20 and 40 x 100: another arm turned, and hubs for the rest.
    expect(values.isExact).toBe(true);
    expect(values.most(0)).toBe(100);
    const counts = values.counts(0);
    expect((counts.get(0) ?? 0) * 24 + (counts.get(1) ?? 0) * 4).toBe(100);
  });

  it('never falls on a coarser scale', () => {
    const odd = {
      ...instance,
      parts: instance.parts.map((part) => ({ ...part, length: Number(part.length) + 0.37 })),
    };
    const exact = readInstance(odd);
    const fine = new GuillotineValues(exact, 1e9);
    const coarse = new GuillotineValues(exact, 2000);
    fine.setValues([24, 4]);
    coarse.setValues([24, 4]);
    expect(coarse.isExact).toBe(false);
    expect(coarse.most(0)).toBeGreaterThanOrEqual(fine.most(0));
  });
});
