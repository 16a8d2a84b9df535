import { performance } from 'node:perf_hooks';

/** The least of several runs: what the work takes when nothing else is in the way. */
export function leastMs(runs: number, work: () => void): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    work();
    least = Math.min(least, performance.now() - start);
  }
  return least;
}
