import { Decimal, decimal } from '@scantling/decimals';
import { type FigureTable, Recalculation } from '@scantling/figures';

export interface CurvePoint {
  /** Value of the input, as decimal text. */
  readonly at: string;
  /** What the result is there. */
  readonly value: string;
}

const POINTS = 80;
/** Share of the stretch shown beyond what is marked. */
const BEYOND = 0.25;

/** From where to where an input is drawn: what is marked, some room beside it, and never what it cannot be. */
export function curveWindow(
  now: string,
  marked: readonly string[],
  bounds: { readonly least?: string; readonly most?: string } = {},
): { low: Decimal; high: Decimal } {
  const at = decimal(now);
  const all = [at, ...marked.map((value) => decimal(value))];
  let [low, high] = [Decimal.min(...all), Decimal.max(...all)];
  if (low.eq(high))
    [low, high] = at.isZero() ? [at, decimal(1)] : [Decimal.min(0, at.times(2)), Decimal.max(0, at.times(2))];
  const room = high.minus(low).times(BEYOND);
  const least = bounds.least ?? (at.isNegative() ? undefined : '0');
  const [below, above] = [low.minus(room), high.plus(room)];
  return {
    low: least === undefined ? below : Decimal.max(least, below),
    high: bounds.most === undefined ? above : Decimal.min(bounds.most, above),
  };
}

/** The result at even steps of one input, all else as it stands; places without an answer are left out. */
export function solveCurve(
  table: FigureTable,
  { leaf, result, low, high }: { leaf: string; result: string; low: Decimal; high: Decimal },
  marked: readonly string[] = [],
): CurvePoint[] {
  const sheet = new Recalculation(table);
  const [input, outcome] = [sheet.table.leafPlace(leaf), sheet.table.place(result)];
  const cone = sheet.cone([input], sheet.basis([outcome]));
  const isWhole = table[leaf]?.bounds?.isWhole === true;
  const step = high.minus(low).div(POINTS);
  const even = Array.from({ length: POINTS + 1 }, (_, at) =>
    low.plus(step.times(at)).toSignificantDigits(12),
  );
  const places = [...even, ...marked.map((value) => decimal(value))]
    .map((value) => (isWhole ? value.round() : value))
    .filter((value) => value.gte(low) && value.lte(high))
    .sort((a, b) => a.cmp(b));
  const distinct = [...new Map(places.map((value) => [value.toString(), value])).values()];
  return distinct.flatMap((value) => {
    const now = sheet.move(new Map([[input, value]]), cone, []).get(outcome);
    const out = now === undefined ? sheet.value(outcome) : now;
    return out === null ? [] : [{ at: value.toFixed(), value: out.toFixed() }];
  });
}
