import type { PreparedTable } from '../recalculation/index.ts';

/** An estimate of least, likely and greatest as it stands in a table: three leaves and the mean worked out from them. */
export interface ThreePoints {
  /** Place of the figure (low + 4 likely + high) / 6. */
  readonly mean: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

function isNumber(table: PreparedTable, place: number | undefined, value: number): boolean {
  return place !== undefined && table.figures[place]?.given?.eq(value) === true;
}

/** The inputs of a figure that is derived by the operation from so many. */
function inputsOf(
  table: PreparedTable,
  place: number | undefined,
  operation: string,
  count: number,
): readonly number[] {
  const figure = place === undefined ? undefined : table.figures[place];
  return figure?.operation === operation && figure.inputs.length === count ? figure.inputs : [];
}

/** Every mean of a three-point estimate in a table, known by its derivation: (low + 4 x likely + high) / 6. */
export function findThreePoints(table: PreparedTable): ThreePoints[] {
  return table.figures.flatMap((_, mean): ThreePoints[] => {
    const [all, six] = inputsOf(table, mean, 'quotient', 2);
    const [low, four, high] = isNumber(table, six, 6) ? inputsOf(table, all, 'sum', 3) : [];
    const [likely, factor] = inputsOf(table, four, 'product', 2);
    if (low === undefined || high === undefined || likely === undefined || !isNumber(table, factor, 4))
      return [];
    const values = [low, likely, high].map((place) => table.figures[place]?.given ?? null);
    const [least, middle, most] = values;
    const isInOrder = least && middle && most && least.lte(middle) && middle.lte(most);
    return isInOrder ? [{ mean, low, likely, high }] : [];
  });
}
