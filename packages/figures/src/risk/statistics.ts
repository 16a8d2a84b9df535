import { type Decimal, decimal } from '@scantling/decimals';

/** What samples of one figure come to. */
export interface Statistics {
  readonly mean: number;
  readonly sd: number;
  /** The value that a share of the samples does not exceed, by linear interpolation between them. */
  percentile(share: number): number;
  /** The share of the samples above a value. */
  shareAbove(value: number): number;
  readonly histogram: Histogram;
}

export interface Histogram {
  /** One more than there are counts; multiples of a pleasant step. */
  readonly edges: readonly Decimal[];
  readonly counts: readonly number[];
  /** Share of the samples up to each upper edge. */
  readonly cumulative: readonly number[];
}

/** @param samples at least one, all of them finite */
export function statisticsOf(samples: Float64Array): Statistics {
  const sorted = samples.slice().sort();
  const count = sorted.length;
  const mean = sorted.reduce((sum, value) => sum + value, 0) / count;
  const squares = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    mean,
    sd: count > 1 ? Math.sqrt(squares / (count - 1)) : 0,
    percentile: (share) => {
      const place = share * (count - 1);
      const low = Math.floor(place);
      const value = sorted[low] ?? 0;
      return value + (place - low) * ((sorted[Math.min(count - 1, low + 1)] ?? value) - value);
    },
    shareAbove: (value) => (count - countUpTo(sorted, value)) / count,
    histogram: histogramOf(sorted),
  };
}

/** A price that is just met is no loss, whatever the last digit of a float says. */
function countUpTo(sorted: Float64Array, value: number): number {
  const bound = value + Math.abs(value) * 1e-12;
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((sorted[middle] ?? 0) <= bound) low = middle + 1;
    else high = middle;
  }
  return low;
}

const STEPS = [1, 2, 2.5, 5, 10];
const WANTED_BINS = 24;

function histogramOf(sorted: Float64Array): Histogram {
  const [least = 0, most = 0] = [sorted[0], sorted.at(-1)];
  const width = most > least ? (most - least) / WANTED_BINS : Math.max(Math.abs(most), 1) / 100;
  const power = Math.floor(Math.log10(width));
  const factor = STEPS.find((step) => step * 10 ** power >= width * (1 - 1e-9)) ?? 10;
  const step = decimal(factor).times(decimal(10).pow(power));
  const size = step.toNumber();
  const first = Math.floor(least / size + 1e-9);
  const bins = Math.max(1, Math.ceil(most / size - 1e-9) - first);
  const edges = Array.from({ length: bins + 1 }, (_, at) => step.times(first + at));
  const counts = new Array<number>(bins).fill(0);
  for (const value of sorted) {
    const bin = Math.min(bins - 1, Math.max(0, Math.floor(value / size + 1e-9) - first));
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  let below = 0;
  const cumulative = counts.map((count) => {
    below += count;
    return below / sorted.length;
  });
  return { edges, counts, cumulative };
}
