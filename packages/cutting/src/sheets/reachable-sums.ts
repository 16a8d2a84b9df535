/** The lengths that parts side by side can reach, 0 first, each at most so long; the grid on which cuts need be tried. */
export function reachableSums(
  sizes: readonly { readonly size: number; readonly most: number }[],
  longest: number,
): Int32Array {
  const reached = new Uint8Array(longest + 1);
  reached[0] = 1;
  for (const { size, most } of sizes) {
    // How many of this size the sum ending here holds; fewer first, so that the most allowed is not passed.
    const held = new Uint16Array(longest + 1);
    for (let at = size; at <= longest; at += 1) {
      const before = held[at - size] ?? 0;
      if (reached[at] === 0 && reached[at - size] === 1 && before < most) {
        reached[at] = 1;
        held[at] = before + 1;
      }
    }
  }
  const sums: number[] = [];
  for (let at = 0; at <= longest; at += 1) if (reached[at] === 1) sums.push(at);
  return Int32Array.from(sums);
}

/** For every length the index of the greatest sum that it holds. */
export function indexOfSums(sums: Int32Array, longest: number): Int32Array {
  const index = new Int32Array(longest + 1);
  let last = 0;
  for (let at = 0; at <= longest; at += 1) {
    while (last + 1 < sums.length && (sums[last + 1] ?? 0) <= at) last += 1;
    index[at] = last;
  }
  return index;
}
