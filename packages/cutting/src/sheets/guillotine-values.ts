import type { ExactInstance } from '../instance/exact-instance.ts';
import { indexOfSums, reachableSums } from './reachable-sums.ts';

type Lying = { part: number; length: number; width: number };

/**
 * The most that a guillotine layout of a sheet can be worth when every part may be cut as often as wanted: the
 * recursion of Gilmore and Gomory 1966 (Operations Research 14) over the sums that parts reach. Where its table would
 * be large, sizes are rounded down to a coarse scale, which only lets more fit. Either way no layout is worth more.
 */
export class GuillotineValues {
  /** Whether sizes were not rounded: then a layout of this worth exists, quantities apart. */
  readonly isExact: boolean;
  private readonly lying: Lying[];
  /** Parts too small for the scale; all of them are taken to fit. */
  private readonly tiny: number[] = [];
  private readonly xs: Int32Array;
  private readonly ys: Int32Array;
  private readonly xOf: Int32Array;
  private readonly yOf: Int32Array;
  private readonly best: Float64Array;
  /** What each place holds: nothing 0, part + 1, or minus the cut: index x - 1 or beyond all x those of y. */
  private readonly how: Int32Array;

  constructor(
    private readonly instance: ExactInstance,
    mostWork: number,
  ) {
    const length = Math.max(...instance.stocks.map((stock) => stock.length));
    const width = Math.max(...instance.stocks.map((stock) => stock.width));
    const exact = length <= 4000 && width <= 4000 ? this.gridOf(1, length, width) : null;
    this.isExact = exact !== null && exact.work <= mostWork;
    let scale = 1;
    let grid = exact;
    while (grid === null || grid.work > mostWork) {
      scale = scale === 1 ? Math.max(2, Math.ceil(Math.max(length, width) / 400)) : Math.ceil(scale * 1.2);
      grid = this.gridOf(scale, length, width);
    }
    this.scale = scale;
    this.lying = grid.lying;
    this.tiny = instance.parts.flatMap((part, index) =>
      part.quantity > 0 && Math.min(part.length, part.width) < scale ? [index] : [],
    );
    this.xs = grid.xs;
    this.ys = grid.ys;
    this.xOf = indexOfSums(grid.xs, Math.floor(length / scale));
    this.yOf = indexOfSums(grid.ys, Math.floor(width / scale));
    this.best = new Float64Array(grid.xs.length * grid.ys.length);
    this.how = new Int32Array(grid.xs.length * grid.ys.length);
  }

  private readonly scale: number;

  private gridOf(scale: number, length: number, width: number) {
    const lying = this.instance.parts.flatMap((part, index): Lying[] => {
      const [along, across] = [Math.floor(part.length / scale), Math.floor(part.width / scale)];
      if (part.quantity === 0 || along === 0 || across === 0) return [];
      const upright = { part: index, length: along, width: across };
      return part.canTurn ? [upright, { part: index, length: across, width: along }] : [upright];
    });
    const most = (part: number) => this.instance.parts[part]?.quantity ?? 0;
    const sums = (pick: (one: Lying) => number, longest: number) =>
      reachableSums(
        lying.map((one) => ({ size: pick(one), most: most(one.part) })),
        Math.floor(longest / scale),
      );
    const xs = sums((one) => one.length, length);
    const ys = sums((one) => one.width, width);
    return { lying, xs, ys, work: xs.length * ys.length * ((xs.length + ys.length) / 2 + lying.length / 4) };
  }

  /** Works the table out for these values of parts. */
  setValues(values: ArrayLike<number>): void {
    const { xs, ys, xOf, yOf, best, how } = this;
    const columns = ys.length;
    const lying = this.lying.filter(({ part }) => (values[part] ?? 0) > 1e-12);
    for (let i = 0; i < xs.length; i += 1) {
      const x = xs[i] ?? 0;
      for (let j = 0; j < columns; j += 1) {
        const y = ys[j] ?? 0;
        const at = i * columns + j;
        let [most, held] = [0, 0];
        for (const { part, length, width } of lying) {
          const value = values[part] ?? 0;
          if (length <= x && width <= y && value > most) [most, held] = [value, part + 1];
        }
        for (let cut = 1; cut < i && 2 * (xs[cut] ?? 0) <= x; cut += 1) {
          const other = xOf[x - (xs[cut] ?? 0)] ?? 0;
          const value = (best[cut * columns + j] ?? 0) + (best[other * columns + j] ?? 0);
          if (value > most + 1e-12) [most, held] = [value, -cut];
        }
        for (let cut = 1; cut < j && 2 * (ys[cut] ?? 0) <= y; cut += 1) {
          const other = yOf[y - (ys[cut] ?? 0)] ?? 0;
          const value = (best[i * columns + cut] ?? 0) + (best[i * columns + other] ?? 0);
          if (value > most + 1e-12) [most, held] = [value, -(xs.length + cut)];
        }
        best[at] = most;
        how[at] = held;
      }
    }
    this.ofTiny = this.tiny.reduce(
      (sum, part) => sum + (values[part] ?? 0) * (this.instance.parts[part]?.quantity ?? 0),
      0,
    );
  }

  private ofTiny = 0;

  private corner(stock: number): [i: number, j: number] {
    const { length = 0, width = 0 } = this.instance.stocks[stock] ?? {};
    return [this.xOf[Math.floor(length / this.scale)] ?? 0, this.yOf[Math.floor(width / this.scale)] ?? 0];
  }

  /** No layout of this stock is worth more. */
  most(stock: number): number {
    const [i, j] = this.corner(stock);
    return (this.best[i * this.ys.length + j] ?? 0) + this.ofTiny;
  }

  /** How many of each part the layout worth most holds. */
  counts(stock: number): Map<number, number> {
    const counts = new Map<number, number>();
    const stack = [this.corner(stock)];
    for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
      const [i, j] = at;
      const held = this.how[i * this.ys.length + j] ?? 0;
      if (held > 0) counts.set(held - 1, (counts.get(held - 1) ?? 0) + 1);
      if (held >= 0) continue;
      const cut = -held;
      if (cut < this.xs.length) {
        stack.push([cut, j], [this.xOf[(this.xs[i] ?? 0) - (this.xs[cut] ?? 0)] ?? 0, j]);
      } else {
        const below = cut - this.xs.length;
        stack.push([i, below], [i, this.yOf[(this.ys[j] ?? 0) - (this.ys[below] ?? 0)] ?? 0]);
      }
    }
    return counts;
  }
}
