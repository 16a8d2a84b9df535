const MOST_NODES = 3000;

/**
 * Branch and bound for the knapsack of a stick: parts by falling worth per length, depth first, cut off by what the
 * rest of the length could be worth at the next part's rate. Ends unproven after a fixed number of steps.
 */
export class StickBranching {
  private order: number[] = [];
  private values: Float64Array = new Float64Array(0);
  private most: readonly number[] = [];

  constructor(private readonly lengths: readonly number[]) {}

  setValues(values: Float64Array, most: readonly number[]): void {
    this.values = values;
    this.most = most;
    this.order = this.lengths
      .map((_, part) => part)
      .filter((part) => (values[part] ?? 0) > 1e-12 && (most[part] ?? 0) > 0)
      .sort((a, b) => this.rate(b) - this.rate(a) || a - b);
  }

  private rate(part: number): number {
    return (this.values[part] ?? 0) / (this.lengths[part] ?? 1);
  }

  fill(capacity: number, least: number) {
    const { order } = this;
    const depth = order.length;
    const length = Float64Array.from(order, (part) => this.lengths[part] ?? 1);
    const value = Float64Array.from(order, (part) => this.values[part] ?? 0);
    const rates = Float64Array.from(order, (part) => this.rate(part));
    const taken = new Int32Array(depth);
    const bestTaken = new Int32Array(depth);
    let [best, worth, left, nodes, at] = [Math.max(0, least), 0, capacity, 0, 0];
    let isFound = false;
    for (; nodes < MOST_NODES; nodes += 1) {
      // Down: as many of each as fit, as long as the rest of the length could still pay.
      while (at < depth && worth + left * (rates[at] ?? 0) > best + 1e-9) {
        const size = length[at] ?? 1;
        const times = Math.min(this.most[order[at] ?? 0] ?? 0, Math.floor(left / size));
        taken[at] = times;
        left -= times * size;
        worth += times * (value[at] ?? 0);
        at += 1;
      }
      if (at === depth && worth > best + 1e-9) {
        best = worth;
        bestTaken.set(taken);
        isFound = true;
      }
      // Back: one less of the last part taken.
      at -= 1;
      while (at >= 0 && taken[at] === 0) at -= 1;
      if (at < 0) break;
      taken[at] = (taken[at] ?? 0) - 1;
      left += length[at] ?? 0;
      worth -= value[at] ?? 0;
      at += 1;
    }
    const isProven = nodes < MOST_NODES;
    const counts = new Uint16Array(this.lengths.length);
    if (isFound)
      order.forEach((part, index) => {
        counts[part] = bestTaken[index] ?? 0;
      });
    const most = isProven ? best : Math.max(best, this.fractional(capacity));
    return { value: isFound ? best : 0, most, counts, isProven };
  }

  /** What the length would be worth if parts could be split. */
  private fractional(capacity: number): number {
    let [left, worth] = [capacity, 0];
    for (const part of this.order) {
      const length = this.lengths[part] ?? 1;
      const times = Math.min(this.most[part] ?? 0, left / length);
      worth += times * (this.values[part] ?? 0);
      left -= times * length;
      if (left <= 0) break;
    }
    return worth;
  }
}
