import type { ExactInstance } from '../instance/exact-instance.ts';
import type { Pattern } from '../patterns/pattern.ts';
import { gather, isFree, partsIn, type Region, wholeSheet } from './region.ts';

/** A sheet under way. Once it is part of a plan that was kept it is changed no more: changes go into a copy. */
export interface Sheet {
  readonly stock: number;
  readonly root: Region;
  /** Free regions that parts may go into. */
  free: Region[];
}

/** A way to cut one sheet, with its layout. */
export interface SheetPattern extends Pattern {
  readonly root: Region;
}

/** What a free rectangle is worth, sides in grown steps. */
export type WorthOfRectangle = (length: number, width: number) => number;

export function openSheet({ stocks }: ExactInstance, stock: number): Sheet {
  const { length = 0, width = 0 } = stocks[stock] ?? {};
  const root = wholeSheet(length, width);
  return { stock, root, free: [root] };
}

export function listFree(root: Region): Region[] {
  return gather(root, (region) => isFree(region) && !region.isDead && region.length > 0 && region.width > 0);
}

/** A sheet as a pattern: its cost less what its free rectangles are worth. */
export function sheetPattern(
  { stocks }: ExactInstance,
  { stock, root }: Pick<Sheet, 'stock' | 'root'>,
  worth: WorthOfRectangle | null,
): SheetPattern {
  const counts = new Map<number, number>();
  for (const part of partsIn(root)) counts.set(part, (counts.get(part) ?? 0) + 1);
  const parts = [...counts.keys()].sort((a, b) => a - b);
  const kept =
    worth === null
      ? 0
      : gather(root, isFree).reduce((sum, { length, width }) => sum + worth(length, width), 0);
  return {
    stock,
    root,
    parts,
    counts: parts.map((part) => counts.get(part) ?? 0),
    cost: (stocks[stock]?.cost ?? 0) - kept,
  };
}
