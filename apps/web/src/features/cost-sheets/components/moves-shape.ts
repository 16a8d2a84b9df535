import { Decimal, decimal } from '@scantling/decimals';
import type { FigureTable } from '@scantling/figures';
import type { Moves } from '../api/work-out-sensitivity.ts';

export type MovesRow = Moves['rows'][number];

/** Where one end of a value takes the result, from now; both in percent of the width. */
export interface Stretch {
  readonly left: number;
  readonly width: number;
  /** The result there less the result now, as decimal text. */
  readonly difference: string;
  readonly isRight: boolean;
}

export interface MovesBar {
  readonly row: MovesRow;
  readonly low: Stretch;
  readonly high: Stretch;
  /** Both ends move the result the same way. */
  readonly isOneSided: boolean;
}

export interface MovesShape {
  /** Where the result stands now, in percent of the width. */
  readonly now: number;
  readonly bars: readonly MovesBar[];
  /** Rows that move nothing. */
  readonly level: readonly MovesRow[];
  /** Rows without an answer at an end. */
  readonly broken: readonly MovesRow[];
}

/** Share of the width on either side kept for what is written beside the bars. */
const ROOM = 0.16;

/** Bars from the result now to the result at each end, all to one scale; floats only place them. */
export function movesShape(table: FigureTable, result: string, rows: readonly MovesRow[]): MovesShape {
  const amountAt = (id: string): Decimal => decimal(table[id]?.value ?? '0');
  const now = amountAt(result);
  const worked = rows.flatMap((row) =>
    row.resultLow === null || row.resultHigh === null
      ? []
      : [{ row, low: amountAt(row.resultLow).minus(now), high: amountAt(row.resultHigh).minus(now) }],
  );
  const moving = worked.filter(({ low, high }) => !low.isZero() || !high.isZero());
  const ends = moving.flatMap(({ low, high }) => [low, high]);
  const [least, most] = [Decimal.min(0, ...ends), Decimal.max(0, ...ends)];
  const span = most.minus(least).isZero() ? decimal(1) : most.minus(least);
  const place = (difference: Decimal): number =>
    (ROOM + (1 - 2 * ROOM) * difference.minus(least).div(span).toNumber()) * 100;
  const stretch = (difference: Decimal): Stretch => {
    const [from, to] = [place(decimal(0)), place(difference)];
    return {
      left: Math.min(from, to),
      width: Math.abs(to - from),
      difference: difference.toFixed(),
      isRight: difference.isPositive(),
    };
  };
  return {
    now: place(decimal(0)),
    bars: moving.map(({ row, low, high }) => ({
      row,
      low: stretch(low),
      high: stretch(high),
      isOneSided: low.isNegative() === high.isNegative() && !low.isZero() && !high.isZero(),
    })),
    level: worked.filter(({ low, high }) => low.isZero() && high.isZero()).map(({ row }) => row),
    broken: rows.filter(({ resultLow, resultHigh }) => resultLow === null || resultHigh === null),
  };
}
