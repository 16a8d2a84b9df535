import { writeMillionths } from './exact-length.ts';

type Size = Readonly<{ length: number; width: number }>;
type Part = Readonly<{ id: string; size: Size; canTurn: boolean }>;
type Stock = Readonly<{ id: string; usable: Size; trim: number; available: number }>;

/** How the part may lie. */
function lies({ size, canTurn }: Part): Size[] {
  const turned = { length: size.width, width: size.length };
  return canTurn ? [size, turned] : [size];
}

export function fitsStock(part: Part, { usable }: Stock): boolean {
  return lies(part).some(({ length, width }) => length <= usable.length && width <= usable.width);
}

/** How much larger the usable face would have to be, for the way of lying that needs least. */
function shortage(part: Part, { usable }: Stock): Size {
  const missing = lies(part).map(({ length, width }) => ({
    length: Math.max(0, length - usable.length),
    width: Math.max(0, width - usable.width),
  }));
  return missing.reduce((least, other) =>
    other.length + other.width < least.length + least.width ? other : least,
  );
}

function written({ length, width }: Size, isSheets: boolean): string {
  return isSheets ? `${writeMillionths(length)} x ${writeMillionths(width)}` : writeMillionths(length);
}

/** What is wrong with a part that fits nothing, and the nearest stock that would do. */
export function nearestStockMend(
  part: Part,
  stocks: readonly Stock[],
  isSheets: boolean,
): [reason: string, mend: string] {
  const least = (list: readonly Stock[]) =>
    [...list].sort((a, b) => {
      const [left, right] = [shortage(part, a), shortage(part, b)];
      return left.length + left.width - right.length - right.width;
    })[0];
  const usedUp = least(stocks.filter((stock) => stock.available === 0 && fitsStock(part, stock)));
  const reason = `"${part.id}" (${written(part.size, isSheets)}) fits no stock there is`;
  if (usedUp !== undefined)
    return [reason, `It would fit "${usedUp.id}", of which none is available: allow at least one.`];
  const nearest = least(stocks);
  if (nearest === undefined) return [reason, 'Name stock to cut from.'];
  const missing = shortage(part, nearest);
  const enough = {
    length: nearest.usable.length + missing.length + 2 * nearest.trim,
    width: nearest.usable.width + missing.width + (isSheets ? 2 * nearest.trim : 0),
  };
  const turn = isSheets && !part.canTurn && fitsStock({ ...part, canTurn: true }, nearest);
  return [
    reason,
    `Nearest is "${nearest.id}"; stock of at least ${written(enough, isSheets)}, trims included, would do${turn ? ', or allow the part to be turned' : ''}.`,
  ];
}
