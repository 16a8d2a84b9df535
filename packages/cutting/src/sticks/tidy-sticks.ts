import type { ExactInstance } from '../instance/exact-instance.ts';
import type { Pattern, PatternChoice } from '../patterns/pattern.ts';
import { withoutSurplus } from '../patterns/surplus.ts';
import { stickPattern, type WorthOfRest } from './stick-pricer.ts';

function countsOf({ parts, counts }: Pattern, all: number): Uint16Array {
  const list = new Uint16Array(all);
  parts.forEach((part, at) => {
    list[part] = counts[at] ?? 0;
  });
  return list;
}

/** Cuts exactly what is wanted, each stick from the cheapest stock that is long enough. */
export function tidySticks(
  instance: ExactInstance,
  choice: PatternChoice,
  quantities: readonly number[],
  worthOfRest: WorthOfRest | null,
): PatternChoice {
  const exact = withoutSurplus(choice, quantities, (pattern, taken) => {
    const counts = countsOf(pattern, instance.parts.length);
    for (const [part, number] of taken) counts[part] = (counts[part] ?? 0) - number;
    const smaller = stickPattern(instance, pattern.stock, counts, worthOfRest);
    return smaller.parts.length === 0 ? null : smaller;
  });
  const free = instance.stocks.map((stock) => stock.available);
  for (const { pattern, count } of exact) free[pattern.stock] = (free[pattern.stock] ?? 0) - count;
  return exact.flatMap(({ pattern, count }) => {
    const used = pattern.parts.reduce(
      (sum, part, at) => sum + (pattern.counts[at] ?? 0) * (instance.parts[part]?.length ?? 0),
      0,
    );
    const counts = countsOf(pattern, instance.parts.length);
    const cheaper = instance.stocks.flatMap(({ length }, stock) => {
      if (length < used || (free[stock] ?? 0) < count) return [];
      const other = stickPattern(instance, stock, counts, worthOfRest);
      return other.cost < pattern.cost - 1e-9 ? [other] : [];
    });
    const [cheapest] = cheaper.sort((a, b) => a.cost - b.cost);
    if (cheapest === undefined) return [{ pattern, count }];
    free[cheapest.stock] = (free[cheapest.stock] ?? 0) - count;
    free[pattern.stock] = (free[pattern.stock] ?? 0) + count;
    return [{ pattern: cheapest, count }];
  });
}
