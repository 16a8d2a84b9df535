/**
 * What one measurement found: the time of our code and of the reference for the same work, in milliseconds, or another
 * measure of both in the unit named.
 */
export type Measurement = {
  oursMs: number;
  referenceMs: number;
  unit?: string;
  /** Printed above the line of the result. */
  notes?: readonly string[];
};

/** Each tests/bench/*.bench.ts exports `benchmarks: readonly Benchmark[]`; scripts/bench.mjs runs them in order. */
export type Benchmark = {
  name: string;
  /** What it is measured against, as it stands in the printed line. */
  reference: string;
  /** The bench fails where ours / reference is above it. */
  largestRatio?: number;
  run: () => Promise<Measurement>;
};
