import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { BLOCK, type Column, stretchColumn } from './column-arithmetic.ts';
import { newScores, type Scores, scoreAll } from './pert-quantile.ts';
import type { Uncertain } from './risk-question.ts';
import { likelyPlace, type StandardQuantile, standardQuantile } from './spread.ts';

/** One uniform number a sample, shared by all values that move together. */
export interface Stream {
  readonly name: string;
  readonly isGroup: boolean;
  /** The uniform numbers of the block. */
  readonly uniforms: Column;
}

interface Filling {
  readonly uniforms: Column;
  readonly scores: Scores;
  readonly quantile: StandardQuantile;
  /** Values of one stream and shape differ by their ends alone, so that the quantile is worked out once for all. */
  readonly users: { readonly out: Column; readonly low: number; readonly width: number }[];
}

/** Draws block after block from a seed: the same seed gives the same samples. */
export function createSampler(
  uncertain: readonly Uncertain[],
  seed: number,
  columnOf: (place: number) => Column,
) {
  const generator = xoroshiro128plus(seed);
  const streams = new Map<string, Stream & { draw: () => number; scores: Scores }>();
  const fillings = new Map<string, Filling>();
  for (const value of uncertain) {
    const isGroup = value.group !== null;
    const name = value.group ?? value.id;
    const key = `${isGroup ? 'group' : 'value'}/${name}`;
    let stream = streams.get(key);
    if (stream === undefined) {
      // Each stream begins 2^64 numbers after the one before it.
      const own = generator.clone();
      generator.jump();
      stream = {
        name,
        isGroup,
        uniforms: new Float64Array(BLOCK),
        draw: () => uniformFloat64(own),
        scores: newScores(BLOCK),
      };
      streams.set(key, stream);
    }
    const likely = likelyPlace(value);
    const shapeKey = `${key}/${value.shape}/${likely.toPrecision(12)}`;
    const filling = fillings.get(shapeKey) ?? {
      uniforms: stream.uniforms,
      scores: stream.scores,
      quantile: standardQuantile(value.shape, likely),
      users: [],
    };
    fillings.set(shapeKey, filling);
    filling.users.push({
      out: columnOf(value.place),
      low: value.low.toNumber(),
      width: value.high.minus(value.low).toNumber(),
    });
  }
  const drawn = [...streams.values()];
  const filled = [...fillings.values()];
  const standard = new Float64Array(BLOCK);
  return {
    streams: drawn as readonly Stream[],
    next: () => {
      for (const { uniforms, draw, scores } of drawn) {
        for (let at = 0; at < BLOCK; at += 1) uniforms[at] = draw();
        scoreAll(uniforms, scores);
      }
      for (const { uniforms, scores, quantile, users } of filled) {
        quantile(standard, uniforms, scores);
        for (const { out, low, width } of users) stretchColumn(out, standard, low, width);
      }
    },
  };
}
