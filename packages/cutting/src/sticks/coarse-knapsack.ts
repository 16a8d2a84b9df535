import { type Filling, StickKnapsack } from './stick-knapsack.ts';

const CELLS = 600_000;
const LEAST_STEPS = 2000;

/**
 * The knapsack of a stick on a coarse scale, lengths rounded up and the stick down: what it finds always fits, though
 * a better filling may exist.
 */
export class CoarseKnapsack {
  private readonly scale: number;
  private readonly knapsack: StickKnapsack;

  constructor(lengths: readonly number[], longest: number) {
    const steps = Math.max(LEAST_STEPS, Math.floor(CELLS / Math.max(1, lengths.length)));
    this.scale = Math.max(1, Math.ceil(longest / steps));
    this.knapsack = new StickKnapsack(
      lengths.map((length) => Math.ceil(length / this.scale)),
      Math.floor(longest / this.scale),
    );
  }

  setValues(values: Float64Array, most: readonly number[]): void {
    this.knapsack.setValues(values, most);
  }

  fill(capacity: number): Filling {
    return this.knapsack.fill(Math.floor(capacity / this.scale), 0);
  }
}
