/** Numbers from 0 to below 1 that look random; the same seed gives the same numbers on every machine. */
export type Generator = () => number;

/**
 * Mulberry32: one 32-bit word of state, integer steps only (Tommy Ettinger, public domain; written from memory).
 * @param seed any integer
 */
export function createSeededGenerator(seed: number): Generator {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
