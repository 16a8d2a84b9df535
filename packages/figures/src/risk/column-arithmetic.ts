/** As many samples as are worked through at once; a multiple of 4. */
export const BLOCK = 256;
export type Column = Float64Array;

const ZEROS = new Float64Array(BLOCK);
const ONES = new Float64Array(BLOCK).fill(1);

// Most of a sheet is sums and products. Going round a loop takes longer than adding two numbers, so sums take four
// columns at a time, and the other loops four samples.

/** All columns added; nothing to add is 0. */
export function addColumns(out: Column, inputs: readonly Column[]): void {
  addTwo(out, inputs[0] ?? ZEROS, inputs[1] ?? ZEROS);
  let next = 2;
  for (; next + 4 <= inputs.length; next += 4) addFour(out, inputs, next);
  for (; next < inputs.length; next += 1) addTwo(out, out, inputs[next] ?? ZEROS);
}

function addTwo(out: Column, a: Column, b: Column): void {
  for (let at = 0; at < BLOCK; at += 4) {
    out[at] = (a[at] ?? 0) + (b[at] ?? 0);
    out[at + 1] = (a[at + 1] ?? 0) + (b[at + 1] ?? 0);
    out[at + 2] = (a[at + 2] ?? 0) + (b[at + 2] ?? 0);
    out[at + 3] = (a[at + 3] ?? 0) + (b[at + 3] ?? 0);
  }
}

function addFour(out: Column, inputs: readonly Column[], from: number): void {
  const a = inputs[from] ?? ZEROS;
  const b = inputs[from + 1] ?? ZEROS;
  const c = inputs[from + 2] ?? ZEROS;
  const d = inputs[from + 3] ?? ZEROS;
  for (let at = 0; at < BLOCK; at += 1)
    out[at] = (out[at] ?? 0) + ((a[at] ?? 0) + (b[at] ?? 0)) + ((c[at] ?? 0) + (d[at] ?? 0));
}

/** All columns multiplied; nothing to multiply is 1. */
export function multiplyColumns(out: Column, inputs: readonly Column[]): void {
  multiplyTwo(out, inputs[0] ?? ONES, inputs[1] ?? ONES);
  for (let next = 2; next < inputs.length; next += 1) multiplyTwo(out, out, inputs[next] ?? ONES);
}

function multiplyTwo(out: Column, a: Column, b: Column): void {
  for (let at = 0; at < BLOCK; at += 4) {
    out[at] = (a[at] ?? 0) * (b[at] ?? 0);
    out[at + 1] = (a[at + 1] ?? 0) * (b[at + 1] ?? 0);
    out[at + 2] = (a[at + 2] ?? 0) * (b[at + 2] ?? 0);
    out[at + 3] = (a[at + 3] ?? 0) * (b[at + 3] ?? 0);
  }
}

/** low + width x place, for values whose place between their ends is known. */
export function stretchColumn(out: Column, places: Column, low: number, width: number): void {
  for (let at = 0; at < BLOCK; at += 4) {
    out[at] = low + width * (places[at] ?? 0);
    out[at + 1] = low + width * (places[at + 1] ?? 0);
    out[at + 2] = low + width * (places[at + 2] ?? 0);
    out[at + 3] = low + width * (places[at + 3] ?? 0);
  }
}
