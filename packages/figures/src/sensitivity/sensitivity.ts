import { Decimal, type DecimalLike, decimal, ONE } from '@scantling/decimals';
import type { LeafBounds } from '../figure.ts';
import {
  type FigureFault,
  type Recalculation,
  UnknownFigureError,
  type Worked,
} from '../recalculation/index.ts';
import { findThreePoints, type ThreePoints } from '../three-points/index.ts';

export interface SensitivityQuestion {
  /** Id of the figure looked at. */
  readonly result: string;
  /** How far every value moves either way, as a share of it: 0.1 is 10 %. */
  readonly move: DecimalLike;
  /** Values that move within a range of their own instead, by id. */
  readonly ranges?: Readonly<Record<string, { readonly low: DecimalLike; readonly high: DecimalLike }>>;
  /** Only these leaves; all the result rests on where absent. */
  readonly leaves?: readonly string[];
  /** A three-point estimate moves from its least to its greatest instead of by the share. */
  readonly usesThreePoints?: boolean;
}

/** What one value does to the result. */
export interface SensitivityRow {
  /** A leaf, or the mean of a three-point estimate, which moves as one. */
  readonly id: string;
  readonly by: 'share' | 'range';
  readonly low: Decimal;
  readonly high: Decimal;
  /** The end at which it is kept to what it can be at all: a yield is never above 1. */
  readonly keptAt: readonly ('low' | 'high')[];
  /** The result at each end; null where there is no answer. */
  readonly resultLow: Worked;
  readonly resultHigh: Worked;
  /** Between the two ends, 0 or more. */
  readonly swing: Worked;
  readonly faults: readonly FigureFault[];
}

/** zero: a share of nothing is nothing. definition: true by definition. whole: it counts things. */
export type Stillness = 'zero' | 'definition' | 'whole';

export interface Sensitivity {
  readonly result: Worked;
  /** The widest swing first. */
  readonly rows: readonly SensitivityRow[];
  /** What did not move, and why. */
  readonly still: readonly { readonly id: string; readonly why: Stillness }[];
}

/** What may move: a leaf with its bounds, or the mean of three points with what it stands for. */
interface Mover {
  readonly place: number;
  readonly id: string;
  readonly value: Decimal;
  readonly bounds: LeafBounds;
  readonly isDefinition: boolean;
  readonly three: ThreePoints | null;
}

function moversOf(sheet: Recalculation, basis: ReadonlySet<number>): Mover[] {
  const threes = findThreePoints(sheet.table).filter(({ mean }) => basis.has(mean));
  const byMean = new Map(threes.map((three) => [three.mean, three]));
  const inThrees = new Set(threes.flatMap(({ low, likely, high }) => [low, likely, high]));
  return [...basis]
    .sort((a, b) => a - b)
    .flatMap((place): Mover[] => {
      const figure = sheet.table.figures[place];
      const value = sheet.value(place);
      const three = byMean.get(place) ?? null;
      const isLeaf = figure?.node.source !== undefined && figure.operation === null && !inThrees.has(place);
      if (figure === undefined || value === null || !(isLeaf || three)) return [];
      const { id, bounds = {}, source } = figure.node;
      return [{ place, id, value, bounds, isDefinition: source?.kind === 'definition', three }];
    });
}

function within({ least, most }: LeafBounds, value: Decimal): Decimal {
  if (least !== undefined && value.lt(least)) return decimal(least);
  return most !== undefined && value.gt(most) ? decimal(most) : value;
}

function rangeOf(
  question: SensitivityQuestion,
  mover: Mover,
  sheet: Recalculation,
): [Decimal, Decimal] | Stillness {
  const own = question.ranges?.[mover.id];
  if (own !== undefined) return [decimal(own.low), decimal(own.high)];
  if (mover.isDefinition) return 'definition';
  if (question.usesThreePoints === true && mover.three !== null) {
    const [low, high] = [sheet.value(mover.three.low), sheet.value(mover.three.high)];
    if (low && high) return [low, high];
  }
  if (mover.value.isZero()) return 'zero';
  if (mover.bounds.isWhole === true) return 'whole';
  const move = decimal(question.move);
  const ends = [mover.value.times(ONE.minus(move)), mover.value.times(ONE.plus(move))] as const;
  return [Decimal.min(...ends), Decimal.max(...ends)];
}

/**
 * How far the result follows each value it rests on: every value is moved alone, low and high, and only what lies
 * between it and the result is worked out again.
 * @throws UnknownFigureError, TooMuchWorkError
 */
export function sensitivity(sheet: Recalculation, question: SensitivityQuestion): Sensitivity {
  const result = sheet.table.place(question.result);
  const basis = sheet.basis([result]);
  basis.delete(result);
  const movers = moversOf(sheet, basis);
  const known = new Set(movers.map(({ id }) => id));
  for (const id of [...(question.leaves ?? []), ...Object.keys(question.ranges ?? {})])
    if (!known.has(id)) throw new UnknownFigureError(id);
  const wanted = question.leaves === undefined ? null : new Set(question.leaves);
  const toResult = sheet.basis([result]);
  const rows: SensitivityRow[] = [];
  const still: { id: string; why: Stillness }[] = [];
  for (const mover of movers) {
    if (wanted?.has(mover.id) === false) continue;
    const range = rangeOf(question, mover, sheet);
    if (typeof range === 'string') still.push({ id: mover.id, why: range });
    else
      rows.push(
        rowOf(sheet, mover, { range, result, toResult, by: isByRange(question, mover) ? 'range' : 'share' }),
      );
  }
  rows.sort((a, b) => (b.swing ?? NOWHERE).cmp(a.swing ?? NOWHERE) || (a.id < b.id ? -1 : 1));
  return { result: sheet.value(result), rows, still };
}

// A value without an answer at one end has no swing; it stands after those that have one.
const NOWHERE = decimal(-1);

function isByRange({ ranges, usesThreePoints }: SensitivityQuestion, { id, three }: Mover): boolean {
  return ranges?.[id] !== undefined || (usesThreePoints === true && three !== null);
}

function rowOf(
  sheet: Recalculation,
  mover: Mover,
  asked: {
    range: readonly [Decimal, Decimal];
    result: number;
    toResult: ReadonlySet<number>;
    by: 'share' | 'range';
  },
): SensitivityRow {
  const cone = sheet.cone([mover.place], asked.toResult);
  const faults: FigureFault[] = [];
  const at = (value: Decimal): Worked => {
    const moved = sheet.move(new Map([[mover.place, value]]), cone, faults).get(asked.result);
    return moved === undefined ? sheet.value(asked.result) : moved;
  };
  const [low, high] = [within(mover.bounds, asked.range[0]), within(mover.bounds, asked.range[1])];
  const [resultLow, resultHigh] = [at(low), at(high)];
  return {
    id: mover.id,
    by: asked.by,
    low,
    high,
    keptAt: [
      ...(low.eq(asked.range[0]) ? [] : ['low' as const]),
      ...(high.eq(asked.range[1]) ? [] : ['high' as const]),
    ],
    resultLow,
    resultHigh,
    swing: resultLow === null || resultHigh === null ? null : resultHigh.minus(resultLow).abs(),
    faults,
  };
}
