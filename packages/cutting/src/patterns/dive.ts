import type { ExactStock } from '../instance/exact-instance.ts';
import type { SearchWatch } from '../search-limits.ts';
import type { Generator } from '../seeded-generator.ts';
import { generateColumns } from './generate-columns.ts';
import type { Pattern, PatternChoice, PatternPricer } from './pattern.ts';
import type { MasterSolution, PatternMaster } from './pattern-master.ts';

export interface DiveOptions<P extends Pattern> {
  readonly master: PatternMaster<P>;
  readonly pricer: PatternPricer<P>;
  readonly stocks: readonly ExactStock[];
  readonly quantities: readonly number[];
  readonly watch: SearchWatch;
  readonly timeShare: number;
  /** Rounds of column generation after each step down. */
  readonly roundsEach: number;
  /** How often it may turn back. */
  readonly mostFailures: number;
  /** Only plans that cost less are of interest. */
  readonly cutoff: number;
  /** All costs are whole numbers, so that a plan must be one step cheaper than the cutoff. */
  readonly isWhole: boolean;
  /** Chance decides among the fractional patterns; where absent the largest is taken. */
  readonly random?: Generator;
}

function mostOf({ parts, counts }: Pattern, left: readonly number[]): number {
  return parts.reduce(
    (most, part, at) => Math.min(most, Math.floor((left[part] ?? 0) / (counts[at] ?? 1))),
    Number.POSITIVE_INFINITY,
  );
}

/** The patterns the linear program uses whole, or else the one it uses most of. */
function chosenFrom<P extends Pattern>(
  patterns: readonly P[],
  { values }: MasterSolution,
  left: readonly number[],
  random: Generator | undefined,
): { pattern: P; count: number }[] {
  const usable = patterns.flatMap((pattern, index) => {
    const value = values[index] ?? 0;
    return value > 1e-6 && mostOf(pattern, left) > 0 ? [{ pattern, value }] : [];
  });
  const whole = usable.filter(({ value }) => value >= 1 - 1e-6);
  if (whole.length > 0)
    return whole.map(({ pattern, value }) => ({ pattern, count: Math.floor(value + 1e-6) }));
  const weights = usable.map(({ value }) => value * value * value);
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  let drawn = random === undefined ? -1 : random() * all;
  if (drawn >= 0) {
    for (const [index, weight] of weights.entries()) {
      drawn -= weight;
      const taken = usable[index];
      if (drawn < 0 && taken !== undefined) return [{ pattern: taken.pattern, count: 1 }];
    }
  }
  const [largest] = usable.sort((a, b) => b.value - a.value);
  return largest === undefined ? [] : [{ pattern: largest.pattern, count: 1 }];
}

/** Where a dive stands: what is left, what was taken, and what led nowhere from here. */
interface Depth<P extends Pattern> {
  readonly left: readonly number[];
  readonly available: readonly number[];
  readonly cost: number;
  readonly taken: PatternChoice<P>;
  readonly banned: Set<P>;
}

function deeper<P extends Pattern>(at: Depth<P>, chosen: PatternChoice<P>): Depth<P> {
  const left = [...at.left];
  const available = [...at.available];
  const taken: { pattern: P; count: number }[] = [];
  let cost = at.cost;
  for (const { pattern, count } of chosen) {
    const most = Math.min(count, mostOf(pattern, left), available[pattern.stock] ?? 0);
    if (most <= 0) continue;
    pattern.parts.forEach((part, index) => {
      left[part] = (left[part] ?? 0) - most * (pattern.counts[index] ?? 0);
    });
    available[pattern.stock] = (available[pattern.stock] ?? 0) - most;
    cost += most * pattern.cost;
    taken.push({ pattern, count: most });
  }
  return { left, available, cost, taken, banned: new Set() };
}

const MOST_BANNED = 3;

/** Back to where another way is open: the step that led nowhere is banned there. */
function backTrack<P extends Pattern>(path: Depth<P>[]): boolean {
  while (path.length > 1) {
    const [failed] = path.splice(-1);
    const before = path.at(-1);
    const step = failed?.taken.at(-1)?.pattern;
    if (before === undefined || step === undefined) return false;
    before.banned.add(step);
    if (before.banned.size <= MOST_BANNED) return true;
  }
  return false;
}

/**
 * Dives: takes what the linear program uses whole, else rounds its largest pattern up, solves for what is left with
 * new patterns, and so on down to a whole plan; where that becomes too dear, a step back and another way.
 * @returns null where nothing below the cutoff was found
 */
export function dive<P extends Pattern>(options: DiveOptions<P>): PatternChoice<P> | null {
  const { master, watch } = options;
  const path: Depth<P>[] = [
    {
      left: options.quantities,
      available: options.stocks.map(({ available }) => available),
      cost: 0,
      taken: [],
      banned: new Set(),
    },
  ];
  const most = options.cutoff - (options.isWhole ? 1 : 0) + 1e-6;
  let failures = 0;
  try {
    for (let at = path.at(-1); at !== undefined; at = path.at(-1)) {
      if (at.left.every((quantity) => quantity === 0)) return path.flatMap(({ taken }) => taken);
      if (watch.isUp(options.timeShare)) return null;
      master.narrow(at.left, at.available, at.banned);
      const { solution } = generateColumns({
        ...options,
        quantities: at.left,
        mostRounds: options.roundsEach,
        isRough: true,
      });
      const chosen =
        solution === null || at.cost + solution.objective > most
          ? []
          : chosenFrom(master.patterns, solution, at.left, options.random);
      const next = deeper(at, chosen);
      if (next.taken.length > 0) path.push(next);
      else {
        failures += 1;
        if (failures > options.mostFailures || !backTrack(path)) return null;
      }
    }
    return null;
  } finally {
    master.widen();
  }
}
