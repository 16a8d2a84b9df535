import type { ExactInstance } from '../instance/exact-instance.ts';
import type { Pattern, PatternChoice } from '../patterns/pattern.ts';
import { stickPattern, type WorthOfRest } from './stick-pricer.ts';

/** Fills one stick from the longest part left downwards. */
function filledWith(
  instance: ExactInstance,
  order: readonly number[],
  left: readonly number[],
  length: number,
) {
  const counts = new Uint16Array(instance.parts.length);
  let rest = length;
  for (const part of order) {
    const size = instance.parts[part]?.length ?? 1;
    const times = Math.min(left[part] ?? 0, Math.floor(rest / size));
    counts[part] = times;
    rest -= times * size;
  }
  return { counts, rest };
}

/**
 * Stick after stick: the stock that comes cheapest for the length it cuts, each filled from the longest part left.
 * @returns null where the stock ends before the parts do
 */
export function firstFit(
  instance: ExactInstance,
  quantities: readonly number[],
  worthOfRest: WorthOfRest | null,
): PatternChoice | null {
  const left = [...quantities];
  const available = instance.stocks.map((stock) => stock.available);
  const order = instance.parts
    .map((_, part) => part)
    .sort((a, b) => (instance.parts[b]?.length ?? 0) - (instance.parts[a]?.length ?? 0) || a - b);
  const choice: { pattern: Pattern; count: number }[] = [];
  while (left.some((quantity) => quantity > 0)) {
    const longest = order.find((part) => (left[part] ?? 0) > 0) ?? 0;
    const options = instance.stocks.flatMap(({ length, cost }, stock) => {
      if ((available[stock] ?? 0) === 0 || length < (instance.parts[longest]?.length ?? 0)) return [];
      const { counts, rest } = filledWith(instance, order, left, length);
      return [{ stock, counts, rate: cost / (length - rest) }];
    });
    const [cheapest] = options.sort((a, b) => a.rate - b.rate || a.stock - b.stock);
    if (cheapest === undefined) return null;
    const pattern = stickPattern(instance, cheapest.stock, cheapest.counts, worthOfRest);
    const times = pattern.parts.map((part, at) => Math.floor((left[part] ?? 0) / (pattern.counts[at] ?? 1)));
    const count = Math.min(available[cheapest.stock] ?? 0, ...times);
    pattern.parts.forEach((part, at) => {
      left[part] = (left[part] ?? 0) - (pattern.counts[at] ?? 0) * count;
    });
    available[cheapest.stock] = (available[cheapest.stock] ?? 0) - count;
    choice.push({ pattern, count });
  }
  return choice;
}
