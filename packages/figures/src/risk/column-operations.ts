import type { OperationName } from '../operations/index.ts';
import type { Settings } from '../operations/operation.ts';
import { allocateColumn } from './allocate-column.ts';
import { addColumns, BLOCK, type Column, multiplyColumns } from './column-arithmetic.ts';

export type ColumnOperation = (out: Column, inputs: readonly Column[], settings: Settings) => void;

// What a float makes of whole packs: 3.0000000001 is 3.
const SLACK = 1e-9;
const NONE = new Float64Array(BLOCK);

function folded(fold: (out: Column, a: Column, b: Column) => void): ColumnOperation {
  return (out, inputs) => {
    const first = inputs[0] ?? NONE;
    const second = inputs[1];
    if (second === undefined) out.set(first);
    else fold(out, first, second);
    for (let at = 2; at < inputs.length; at += 1) fold(out, out, inputs[at] ?? NONE);
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
  sum: addColumns,
  product: multiplyColumns,
  least: folded((out, a, b) => {
    for (let at = 0; at < BLOCK; at += 1) out[at] = Math.min(a[at] ?? 0, b[at] ?? 0);
  }),
  greatest: folded((out, a, b) => {
    for (let at = 0; at < BLOCK; at += 1) out[at] = Math.max(a[at] ?? 0, b[at] ?? 0);
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
