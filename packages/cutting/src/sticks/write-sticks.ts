import type { Layout } from '../cutting-plan.ts';
import type { ExactInstance } from '../instance/exact-instance.ts';
import { writeMillionths } from '../instance/exact-length.ts';
import type { PatternChoice } from '../patterns/pattern.ts';

/** The layouts of sticks: the longest parts first, the rest at the end as one offcut. */
export function writeSticks({ stocks, parts, kerf }: ExactInstance, choice: PatternChoice): Layout[] {
  return choice.flatMap(({ pattern, count }) => {
    const stock = stocks[pattern.stock];
    if (stock === undefined) return [];
    const held = pattern.parts
      .flatMap((part, at) => {
        const found = parts[part];
        return found === undefined ? [] : Array.from({ length: pattern.counts[at] ?? 0 }, () => found);
      })
      .sort((a, b) => b.size.length - a.size.length);
    let at = stock.trim;
    const cuts = held.map(({ id, size }) => {
      const cut = { part: id, x: writeMillionths(at) };
      at += size.length + kerf;
      return cut;
    });
    const rest = stock.trim + stock.usable.length - at;
    const offcuts = rest > 0 ? [{ x: writeMillionths(at), length: writeMillionths(rest) }] : [];
    return [{ stock: stock.id, count, cuts, offcuts }];
  });
}
