import type { Layout } from '../cutting-plan.ts';
import type { CuttingInstance, PartDemand, StockPiece } from '../instance/cutting-instance.ts';
import { MILLIONTHS, readMillionths } from '../instance/exact-length.ts';
import { isFreeByCuts, type Rectangle } from './free-by-cuts.ts';

type Placed = Rectangle & Readonly<{ name: string }>;
type Usable = Readonly<{ from: number; toX: number; fromY: number; toY: number }>;

/** Reads a length of instance or plan; what cannot be read comes out as NaN and fails every comparison. */
function read(value: PartDemand['length'] | undefined): number {
  try {
    return readMillionths(value ?? 'nothing', { field: 'length' });
  } catch {
    return Number.NaN;
  }
}

function usableOf(instance: CuttingInstance, stock: StockPiece): Usable {
  const trim = read(stock.trim ?? instance.trim ?? 0);
  // Sticks are one unit wide, so that all that follows reads sheets and sticks alike.
  if (instance.kind === '1d')
    return { from: trim, toX: read(stock.length) - trim, fromY: 0, toY: MILLIONTHS };
  return { from: trim, toX: read(stock.length) - trim, fromY: trim, toY: read(stock.width) - trim };
}

function isInside({ x, y, length, width }: Rectangle, usable: Usable): boolean {
  return x >= usable.from && y >= usable.fromY && x + length <= usable.toX && y + width <= usable.toY;
}

/** Whether at least one kerf lies between the two, in one direction. */
function areApart(a: Rectangle, b: Rectangle, kerf: number): boolean {
  return (
    a.x + a.length + kerf <= b.x ||
    b.x + b.length + kerf <= a.x ||
    a.y + a.width + kerf <= b.y ||
    b.y + b.width + kerf <= a.y
  );
}

function placeParts(instance: CuttingInstance, layout: Layout, faults: string[]): Placed[] {
  const isSheets = instance.kind === '2d-guillotine';
  return layout.cuts.flatMap((cut): Placed[] => {
    const part = instance.parts.find(({ id }) => id === cut.part);
    if (part === undefined) {
      faults.push(`there is no part "${cut.part}"`);
      return [];
    }
    const isTurned = cut.turned === true;
    if (isTurned && (part.rotatable !== true || !isSheets))
      faults.push(`"${part.id}" is turned against its grain`);
    const along = read(part.length);
    const across = isSheets ? read(part.width) : MILLIONTHS;
    return [
      {
        name: `"${part.id}"`,
        x: read(cut.x),
        y: isSheets ? read(cut.y) : 0,
        length: isTurned ? across : along,
        width: isTurned ? along : across,
      },
    ];
  });
}

function placeOffcuts(instance: CuttingInstance, layout: Layout, faults: string[]): Placed[] {
  const isSheets = instance.kind === '2d-guillotine';
  return layout.offcuts.map((offcut) => {
    const placed = {
      name: `the offcut at ${offcut.x}${isSheets ? `, ${offcut.y}` : ''}`,
      x: read(offcut.x),
      y: isSheets ? read(offcut.y) : 0,
      length: read(offcut.length),
      width: isSheets ? read(offcut.width) : MILLIONTHS,
    };
    if (!(placed.length > 0 && placed.width > 0)) faults.push(`${placed.name} has no size`);
    return placed;
  });
}

/** Sticks lose nothing on the way: what is neither part, kerf nor trim is an offcut. */
function checkWholeStick(pieces: readonly Placed[], usable: Usable, kerf: number, faults: string[]): void {
  const sorted = [...pieces].sort((a, b) => a.x - b.x);
  let end = usable.from;
  for (const [index, { x, length, name }] of sorted.entries()) {
    if (x - end > (index === 0 ? 0 : kerf)) faults.push(`what lies before ${name} is in no offcut`);
    end = x + length;
  }
  if (usable.toX - end > kerf) faults.push('what lies at the end is in no offcut');
}

/** What is wrong with one layout; nothing where it can be sawn. */
export function checkLayout(instance: CuttingInstance, layout: Layout): string[] {
  const stock = instance.stock.find(({ id }) => id === layout.stock);
  if (stock === undefined) return [`there is no stock "${layout.stock}"`];
  const faults: string[] = [];
  if (!Number.isSafeInteger(layout.count) || layout.count < 1) faults.push(`its count is ${layout.count}`);
  if (layout.cuts.length === 0) faults.push('nothing is cut from it');
  const kerf = read(instance.kerf);
  const usable = usableOf(instance, stock);
  const parts = placeParts(instance, layout, faults);
  const pieces = [...parts, ...placeOffcuts(instance, layout, faults)];
  for (const piece of pieces) if (!isInside(piece, usable)) faults.push(`${piece.name} leaves "${stock.id}"`);
  pieces.forEach((piece, index) => {
    for (const other of pieces.slice(index + 1))
      if (!areApart(piece, other, kerf)) faults.push(`no kerf between ${piece.name} and ${other.name}`);
  });
  if (faults.length > 0) return faults;
  if (instance.kind === '1d') {
    checkWholeStick(pieces, usable, kerf, faults);
    return faults;
  }
  const { stages = Number.POSITIVE_INFINITY, firstCut = 'either' } = instance;
  if (!isFreeByCuts(pieces, kerf, Number.POSITIVE_INFINITY, 'either'))
    faults.push('no cuts from edge to edge free every part and offcut');
  else if (!isFreeByCuts(parts, kerf, stages, firstCut))
    faults.push(`${stages} stages of cuts do not free every part`);
  return faults;
}
