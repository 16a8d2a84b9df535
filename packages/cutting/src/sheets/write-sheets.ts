import type { Cut, Layout, Offcut } from '../cutting-plan.ts';
import type { ExactInstance } from '../instance/exact-instance.ts';
import { writeMillionths } from '../instance/exact-length.ts';
import type { PatternChoice } from '../patterns/pattern.ts';
import { isFree, type Region } from './region.ts';
import type { SheetPattern } from './sheet.ts';

type Corner = { x: number; y: number };

/** Visits all uncut regions with their places in steps. */
function visit(region: Region, at: Corner, seen: (region: Region, at: Corner) => void): void {
  if (region.way === null) {
    seen(region, at);
    return;
  }
  let { x, y } = at;
  for (const piece of region.pieces) {
    visit(piece, { x, y }, seen);
    if (region.way === 'crosscut') x += piece.length;
    else y += piece.width;
  }
}

/** Free regions at the end of their row, so that the parts stand together from the corner. */
function ordered(region: Region): Region {
  const pieces = region.pieces.map(ordered);
  return { ...region, pieces: [...pieces.filter((piece) => !isFree(piece)), ...pieces.filter(isFree)] };
}

/** One free rectangle as it is left: without the kerf, and up to the sheet's own edge where it reaches it. */
export function offcutSize(
  { step, kerf, stocks }: ExactInstance,
  stock: number,
  { length, width }: Pick<Region, 'length' | 'width'>,
  { x, y }: Corner,
): { length: number; width: number } {
  const piece = stocks[stock];
  if (piece === undefined) return { length: 0, width: 0 };
  const reachesX = x + length === piece.length;
  const reachesY = y + width === piece.width;
  return {
    length: reachesX ? piece.usable.length - x * step : length * step - kerf,
    width: reachesY ? piece.usable.width - y * step : width * step - kerf,
  };
}

/** The layouts of sheets. */
export function writeSheets(instance: ExactInstance, choice: PatternChoice<SheetPattern>): Layout[] {
  const { step } = instance;
  return choice.map(({ pattern, count }) => {
    const { id = '', trim = 0 } = instance.stocks[pattern.stock] ?? {};
    const cuts: Cut[] = [];
    const offcuts: Offcut[] = [];
    visit(ordered(pattern.root), { x: 0, y: 0 }, (region, at) => {
      const place = { x: writeMillionths(trim + at.x * step), y: writeMillionths(trim + at.y * step) };
      if (region.part >= 0) {
        const part = instance.parts[region.part]?.id ?? '';
        cuts.push({ part, ...place, ...(region.isTurned ? { turned: true } : {}) });
        return;
      }
      const size = offcutSize(instance, pattern.stock, region, at);
      if (size.length > 0 && size.width > 0)
        offcuts.push({ ...place, length: writeMillionths(size.length), width: writeMillionths(size.width) });
    });
    return { stock: id, count, cuts, offcuts };
  });
}
