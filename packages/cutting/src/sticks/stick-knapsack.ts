import { StickBranching } from './stick-branching.ts';

export interface Filling {
  /** Sum of the values; the most there is where `isProven`. */
  readonly value: number;
  /** No filling is worth more. */
  readonly most: number;
  /** How many of each part. */
  readonly counts: Uint16Array;
}

/** One part, or several of the same at once. */
type Piece = { part: number; times: number; length: number; value: number };

// What one pass over the table may cost at most before branching is tried first, and at all.
const LARGE_CELLS = 250_000;
const QUICK_CELLS = 1_500_000;
const MOST_CELLS = 60_000_000;

/** 1, 2, 4 ... and the rest: every number up to `most` is a sum of some of them. */
function piecesOf(part: number, most: number, length: number, value: number): Piece[] {
  const pieces: Piece[] = [];
  for (let left = most, times = 1; left > 0; times *= 2) {
    const taken = Math.min(times, left);
    pieces.push({ part, times: taken, length: length * taken, value: value * taken });
    left -= taken;
  }
  return pieces;
}

/** Takes one piece into the table: at every length, with it or without. */
function addPiece(
  best: Float64Array,
  taken: Uint8Array,
  row: number,
  length: number,
  value: number,
  /** Beyond what all pieces so far reach together, every length holds them all. */
  reached: number,
  longest: number,
): void {
  const whole = (best[reached - length] ?? 0) + value;
  if (reached < longest) {
    best.fill(whole, reached + 1, longest + 1);
    taken.fill(1, row + reached + 1, row + longest + 1);
  }
  for (let at = reached; at >= length; at -= 1) {
    const filled = (best[at - length] ?? 0) + value;
    if (filled > (best[at] ?? 0) + 1e-12) {
      best[at] = filled;
      taken[row + at] = 1;
    }
  }
}

/**
 * The bounded knapsack of a stick: which parts, each at most so often, are worth most in a given length. Dynamic
 * programming over lengths in the instance's steps, exact; branch and bound first where the table would be large.
 */
export class StickKnapsack {
  private best = new Float64Array(0);
  private taken = new Uint8Array(0);
  private pieces: Piece[] = [];
  private isTableReady = false;
  private readonly branching: StickBranching;

  constructor(
    private readonly lengths: readonly number[],
    private readonly longest: number,
  ) {
    this.branching = new StickBranching(lengths);
  }

  /** Sets what the parts are worth and how many there may be; parts of no worth stay out. */
  setValues(values: Float64Array, most: readonly number[]): void {
    this.isTableReady = false;
    this.pieces = this.lengths.flatMap((length, part) => {
      const value = values[part] ?? 0;
      const times = Math.min(most[part] ?? 0, Math.floor(this.longest / length));
      return value > 1e-12 && times > 0 ? piecesOf(part, times, length, value) : [];
    });
    this.branching.setValues(values, most);
  }

  /** Whether the exact table takes long. */
  isLarge(): boolean {
    return this.pieces.length * (this.longest + 1) > LARGE_CELLS;
  }

  /** @param least a filling worth no more than this is of no interest, which can save much time */
  fill(capacity: number, least: number): Filling {
    const cells = this.pieces.length * (this.longest + 1);
    if (cells > QUICK_CELLS && !this.isTableReady) {
      const branched = this.branching.fill(capacity, least);
      if (branched.isProven || cells > MOST_CELLS) return branched;
    }
    if (!this.isTableReady) this.makeTable();
    const value = this.best[capacity] ?? 0;
    return { value, most: value, counts: this.readFilling(capacity) };
  }

  /** The most a filling of each length up to the longest is worth; null where the table would be too large. */
  table(): Float64Array | null {
    if (this.pieces.length * (this.longest + 1) > MOST_CELLS) return null;
    if (!this.isTableReady) this.makeTable();
    return this.best;
  }

  private makeTable(): void {
    const size = this.longest + 1;
    if (this.best.length < size) this.best = new Float64Array(size);
    else this.best.fill(0);
    const cells = size * this.pieces.length;
    if (this.taken.length < cells) this.taken = new Uint8Array(cells);
    else this.taken.fill(0, 0, cells);
    let reached = 0;
    for (const [index, { length, value }] of this.pieces.entries()) {
      reached = Math.min(this.longest, reached + length);
      addPiece(this.best, this.taken, index * size, length, value, reached, this.longest);
    }
    this.isTableReady = true;
  }

  private readFilling(capacity: number): Uint16Array {
    const counts = new Uint16Array(this.lengths.length);
    const size = this.longest + 1;
    let left = capacity;
    for (let index = this.pieces.length - 1; index >= 0; index -= 1) {
      const piece = this.pieces[index];
      if (piece === undefined || this.taken[index * size + left] !== 1) continue;
      counts[piece.part] = (counts[piece.part] ?? 0) + piece.times;
      left -= piece.length;
    }
    return counts;
  }
}
