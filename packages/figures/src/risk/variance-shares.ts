import type { Stream } from './sampler.ts';

const BINS = 20;

/**
 * The part of a result's variance that each stream explains by itself, whatever its form: the variance of the means
 * of the result over twenty equal parts of the stream, over all of its variance (a correlation ratio).
 */
export class VarianceShares {
  readonly #sums: readonly Float64Array[];
  readonly #counts: readonly Float64Array[];
  readonly #streams: readonly Stream[];

  constructor(streams: readonly Stream[]) {
    this.#streams = streams;
    this.#sums = streams.map(() => new Float64Array(BINS));
    this.#counts = streams.map(() => new Float64Array(BINS));
  }

  add(at: number, value: number): void {
    for (let stream = 0; stream < this.#streams.length; stream += 1) {
      const bin = Math.min(BINS - 1, Math.floor((this.#streams[stream]?.uniforms[at] ?? 0) * BINS));
      const [sums, counts] = [this.#sums[stream], this.#counts[stream]];
      if (sums === undefined || counts === undefined) continue;
      sums[bin] = (sums[bin] ?? 0) + value;
      counts[bin] = (counts[bin] ?? 0) + 1;
    }
  }

  shares({ mean, sd }: { mean: number; sd: number }): { name: string; isGroup: boolean; share: number }[] {
    const variance = sd * sd;
    const all = this.#streams.map(({ name, isGroup }, stream) => {
      const sums = this.#sums[stream] ?? new Float64Array(BINS);
      const counts = this.#counts[stream] ?? new Float64Array(BINS);
      const total = counts.reduce((sum, count) => sum + count, 0);
      let between = 0;
      for (let bin = 0; bin < BINS; bin += 1) {
        const count = counts[bin] ?? 0;
        if (count > 0) between += count * ((sums[bin] ?? 0) / count - mean) ** 2;
      }
      // Chance alone makes the means of so many parts differ by this much.
      const byChance = (variance * (BINS - 1)) / Math.max(1, total);
      const own = variance === 0 ? 0 : (between / Math.max(1, total) - byChance) / variance;
      return { name, isGroup, share: Math.min(1, Math.max(0, own)) };
    });
    return all.sort((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1));
  }
}
