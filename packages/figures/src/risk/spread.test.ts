import { decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import { spreadMean, spreadQuantiles, spreadVariance } from './spread.ts';

const spread = (low: number, likely: number, high: number, shape: 'pert' | 'triangular') => ({
  low: decimal(low),
  likely: decimal(likely),
  high: decimal(high),
  shape,
});

describe('a spread', () => {
  it('draws a PERT quantile whose mean and variance, added up finely, are those of the closed form', () => {
    for (const likely of [0, 0.05, 1 / 3, 0.5, 0.9, 1]) {
      const wanted = spread(0, likely, 1, 'pert');
      const at = spreadQuantiles(
        wanted,
        Array.from({ length: 20_000 }, (_, index) => (index + 0.5) / 20_000),
      );
      const mean = at.reduce((sum, value) => sum + value, 0) / at.length;
      const variance = at.reduce((sum, value) => sum + (value - mean) ** 2, 0) / at.length;
      expect(mean).toBeCloseTo(spreadMean(wanted).toNumber(), 5);
      expect(variance).toBeCloseTo(spreadVariance(wanted).toNumber(), 5);
    }
  });
});

describe('the quantile of a PERT spread', () => {
  it('is that of the beta distribution, in the tails too', () => {
    // Where the likely value is the least, alpha is 1 and beta 5: 1 - (1 - u) ^ (1 / 5) in closed form.
    const shares = [1e-15, 1e-9, 1e-4, 0.01, 0.2, 0.5, 0.87, 0.999, 1 - 1e-7, 1 - 1e-12];
    spreadQuantiles(spread(0, 0, 1, 'pert'), shares).forEach((value, at) => {
      expect(Math.abs(value - (1 - (1 - (shares[at] ?? 0)) ** 0.2))).toBeLessThan(1e-5);
    });
    // Half way, alpha and beta are 3: F(x) = x^3 (10 - 15 x + 6 x^2).
    spreadQuantiles(spread(0, 0.5, 1, 'pert'), shares).forEach((x, at) => {
      expect(Math.abs(x ** 3 * (10 - 15 * x + 6 * x * x) - (shares[at] ?? 0))).toBeLessThan(1e-5);
    });
  });
});

describe('published three-point estimates', () => {
  it('come out: four tasks in a chain, and the percentiles of triangles', () => {
    // Means and total: Schematex documentation, "Three-point estimation with variance" (B 5/8/14 printed, the others
    // the triples consistent with it). Its variances ((P - O) / 6)^2 are the older rule; ours is (mu - a)(b - mu) / 7.
    const tasks = [
      [2, 3, 5],
      [5, 8, 14],
      [3, 4, 6],
      [1, 2, 3],
    ] as const;
    const means = tasks.map(([low, likely, high]) =>
      spreadMean(spread(low, likely, high, 'pert')).toNumber(),
    );
    [3.17, 8.5, 4.17, 2].forEach((wanted, at) => {
      expect(Math.abs((means[at] ?? 0) - wanted)).toBeLessThan(0.005);
    });
    // Triangular distribution, closed form, recomputed.
    const percentiles = (low: number, likely: number, high: number) =>
      spreadQuantiles(spread(low, likely, high, 'triangular'), [0.1, 0.5, 0.8, 0.9]);
    [6.6432, 8.8038, 10.7137, 11.6762].forEach((wanted, at) => {
      expect(percentiles(5, 8, 14)[at]).toBeCloseTo(wanted, 4);
    });
    expect(percentiles(0, 5, 10)[0]).toBeCloseTo(2.236068, 5);
    expect(spreadVariance(spread(5, 8, 14, 'triangular')).toNumber()).toBe(3.5);
  });
});
