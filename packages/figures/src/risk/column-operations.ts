import type { OperationName } from '../operations/index.ts';
import type { Settings } from '../operations/operation.ts';
import { allocateColumn } from './allocate-column.ts';

/** As many samples as are worked through at once. */
export const BLOCK = 256;
export type Column = Float64Array;
export type ColumnOperation = (out: Column, inputs: readonly Column[], settings: Settings) => void;

// What a float makes of whole packs: 3.0000000001 is 3.
const SLACK = 1e-9;
const NONE = new Float64Array(BLOCK);

function folded(first: number, fold: (out: Column, input: Column) => void): ColumnOperation {
  return (out, inputs) => {
    const [head, ...rest] = inputs;
    if (head === undefined) out.fill(first);
    else out.set(head);
    for (const input of rest) fold(out, input);
  };
}

function byTwo(work: (a: number, b: number) => number): ColumnOperation {
  return (out, [a = NONE, b = NONE]) => {
    for (let at = 0; at < BLOCK; at += 1) out[at] = work(a[at] ?? 0, b[at] ?? 0);
  };
}

function nearestWhole(value: number): number | null {
  const whole = Math.round(value);
  return Math.abs(value - whole) <= SLACK * Math.max(1, Math.abs(value)) ? whole : null;
}

/** The operations of figures on columns of floats; what has no answer is NaN. */
export const COLUMN_OPERATIONS: Readonly<Record<OperationName, ColumnOperation>> = {
  same: (out, [a = NONE]) => out.set(a),
  sum: folded(0, (out, input) => {
    for (let at = 0; at < BLOCK; at += 1) out[at] = (out[at] ?? 0) + (input[at] ?? 0);
  }),
  product: folded(1, (out, input) => {
    for (let at = 0; at < BLOCK; at += 1) out[at] = (out[at] ?? 0) * (input[at] ?? 0);
  }),
  least: folded(0, (out, input) => {
    for (let at = 0; at < BLOCK; at += 1) out[at] = Math.min(out[at] ?? 0, input[at] ?? 0);
  }),
  greatest: folded(0, (out, input) => {
    for (let at = 0; at < BLOCK; at += 1) out[at] = Math.max(out[at] ?? 0, input[at] ?? 0);
  }),
  // Written out, because a function handed in is not drawn into the loop: these two are most of a cost sheet.
  difference: (out, [a = NONE, b = NONE]) => {
    for (let at = 0; at < BLOCK; at += 1) out[at] = (a[at] ?? 0) - (b[at] ?? 0);
  },
  quotient: (out, [a = NONE, b = NONE]) => {
    for (let at = 0; at < BLOCK; at += 1) {
      const divisor = b[at] ?? 0;
      out[at] = divisor === 0 ? Number.NaN : (a[at] ?? 0) / divisor;
    }
  },
  'round-up': byTwo((a, b) => (b === 0 ? Number.NaN : (nearestWhole(a / b) ?? Math.ceil(a / b)) * b)),
  'round-down': byTwo((a, b) => (b === 0 ? Number.NaN : (nearestWhole(a / b) ?? Math.floor(a / b)) * b)),
  round: (out, [a = NONE], { places = '0' }) => {
    const scale = 10 ** Number(places);
    for (let at = 0; at < BLOCK; at += 1) {
      const value = a[at] ?? 0;
      out[at] = (Math.sign(value) * Math.floor(Math.abs(value) * scale + 0.5 + SLACK)) / scale;
    }
  },
  power: byTwo((a, b) => a ** b),
  logarithm: byTwo((a, b) => (a <= 0 ? Number.NaN : Math.log(a) / Math.log(b))),
  choose: (out, [a = NONE, b = NONE, reached = NONE, below = NONE]) => {
    for (let at = 0; at < BLOCK; at += 1) {
      const bound = b[at] ?? 0;
      out[at] = ((a[at] ?? 0) >= bound - Math.abs(bound) * 1e-12 ? reached[at] : below[at]) ?? 0;
    }
  },
  allocate: allocateColumn,
};
