import { nameOf, type Pattern, type PatternChoice } from './pattern.ts';

/** A pattern with fewer parts: how many of each are taken out. */
export type Without<P extends Pattern> = (pattern: P, taken: ReadonlyMap<number, number>) => P | null;

/** How many more of each part a choice cuts than is wanted. */
function surplusOf(choice: PatternChoice, quantities: readonly number[]): number[] {
  const cut = quantities.map((quantity) => -quantity);
  for (const { pattern, count } of choice)
    pattern.parts.forEach((part, at) => {
      cut[part] = (cut[part] ?? 0) + count * (pattern.counts[at] ?? 0);
    });
  return cut;
}

/** Cuts exactly what is wanted: what a choice cuts too many of is taken out of its patterns, piece by piece. */
export function withoutSurplus<P extends Pattern>(
  choice: PatternChoice<P>,
  quantities: readonly number[],
  without: Without<P>,
): PatternChoice<P> {
  const surplus = surplusOf(choice, quantities);
  if (surplus.every((number) => number <= 0)) return choice;
  const kept = new Map<string, { pattern: P; count: number }>();
  const keep = (pattern: P, count: number) => {
    const known = kept.get(nameOf(pattern));
    kept.set(nameOf(pattern), { pattern, count: count + (known?.count ?? 0) });
  };
  for (const { pattern, count } of choice) {
    let left = count;
    while (left > 0) {
      const taken = new Map<number, number>();
      pattern.parts.forEach((part, at) => {
        const number = Math.min(surplus[part] ?? 0, pattern.counts[at] ?? 0);
        if (number > 0) taken.set(part, number);
      });
      if (taken.size === 0) break;
      for (const [part, number] of taken) surplus[part] = (surplus[part] ?? 0) - number;
      const smaller = without(pattern, taken);
      if (smaller !== null) keep(smaller, 1);
      left -= 1;
    }
    if (left > 0) keep(pattern, left);
  }
  return [...kept.values()];
}
