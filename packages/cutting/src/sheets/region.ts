/** Which way a region is cut: across the length (pieces side by side along x), or along it. */
export type Way = 'crosscut' | 'rip';

/**
 * A rectangle of a sheet: cut on into pieces that lie side by side, or a part, or free. Sizes in grown steps, so that
 * the pieces of a region fill it without kerfs.
 */
export interface Region {
  length: number;
  width: number;
  /** How its pieces lie; null where it is not cut on. */
  way: Way | null;
  pieces: Region[];
  parent: Region | null;
  /** The part it is; -1 where it is none. */
  part: number;
  isTurned: boolean;
  /** Directions of cuts after one another that made it. */
  stage: number;
  /** Free, but only a trim: beyond the stages allowed. */
  isDead: boolean;
}

function freeRegion(length: number, width: number, parent: Region | null, stage: number): Region {
  return { length, width, way: null, pieces: [], parent, part: -1, isTurned: false, stage, isDead: false };
}

export function wholeSheet(length: number, width: number): Region {
  return freeRegion(length, width, null, 0);
}

export function isFree({ way, part }: Region): boolean {
  return way === null && part < 0;
}

/** The stage a region's pieces stand at when it is cut this way, given how the first cuts of a sheet run. */
export function stageOfCut(region: Region, way: Way, firstCut: Way | 'either'): number {
  if (region.parent?.way === way) return region.stage;
  // On a whole sheet whose first cuts run the other way, those are skipped but counted.
  const skipped = region.parent === null && firstCut !== 'either' && firstCut !== way ? 1 : 0;
  return region.stage + 1 + skipped;
}

/** Cuts a free region in two this way. @returns the piece of the size wanted; the other stays free */
function cutOff(region: Region, way: Way, size: number, firstCut: Way | 'either', isDead: boolean): Region {
  const stage = stageOfCut(region, way, firstCut);
  const across = way === 'crosscut';
  const rest = (across ? region.length : region.width) - size;
  const piece = (extent: number, parent: Region) =>
    across
      ? freeRegion(extent, region.width, parent, stage)
      : freeRegion(region.length, extent, parent, stage);
  const { parent } = region;
  if (parent?.way === way) {
    const other = piece(rest, parent);
    other.isDead = isDead;
    if (across) region.length = size;
    else region.width = size;
    parent.pieces.splice(parent.pieces.indexOf(region) + 1, 0, other);
    return region;
  }
  const first = piece(size, region);
  const other = piece(rest, region);
  other.isDead = isDead;
  region.way = way;
  region.pieces = [first, other];
  return first;
}

/** Where and how a part goes into a free region. */
export interface Insertion {
  region: Region;
  isTurned: boolean;
  firstWay: Way;
  /** What is left beside the last cut is a trim only. */
  isTrimmed: boolean;
}

/** Cuts a part out of a free region: the first cut takes the whole breadth of the region, the second frees the part. */
export function insertPart(
  { region, isTurned, firstWay, isTrimmed }: Insertion,
  part: number,
  length: number,
  width: number,
  firstCut: Way | 'either',
): void {
  const second: Way = firstWay === 'crosscut' ? 'rip' : 'crosscut';
  let at = region;
  for (const way of [firstWay, second]) {
    const size = way === 'crosscut' ? length : width;
    const extent = way === 'crosscut' ? at.length : at.width;
    if (extent <= size) continue;
    const other = way === 'crosscut' ? at.width > width : at.length > length;
    const isLast = way === second || !other;
    at = cutOff(at, way, size, firstCut, isLast && isTrimmed);
  }
  at.part = part;
  at.isTurned = isTurned;
}

/** Frees a region with all it holds, and joins it with what is free beside it. @returns the parts that were in it */
export function clearRegion(region: Region): number[] {
  const parts = partsIn(region);
  region.way = null;
  region.pieces = [];
  region.part = -1;
  region.isTurned = false;
  let at: Region | null = region;
  while (at !== null) {
    const parent: Region | null = at.parent;
    if (parent === null) break;
    const free = parent.pieces.filter(isFree);
    const across = parent.way === 'crosscut';
    if (free.length === parent.pieces.length) {
      parent.way = null;
      parent.pieces = [];
      at = parent;
      continue;
    }
    // The order of pieces side by side does not matter, so that all that is free becomes one.
    for (const other of free) {
      if (other === at) continue;
      if (across) at.length += other.length;
      else at.width += other.width;
    }
    const kept: Region = at;
    kept.isDead = false;
    parent.pieces = [...parent.pieces.filter((piece) => !isFree(piece)), kept];
    break;
  }
  return parts;
}

/** The parts a region holds, one entry each. */
export function partsIn(region: Region): number[] {
  if (region.way === null) return region.part < 0 ? [] : [region.part];
  return region.pieces.flatMap(partsIn);
}

/** A copy that shares nothing. */
export function copyRegion(region: Region, parent: Region | null = null): Region {
  const { length, width, way, part, isTurned, stage, isDead } = region;
  const pieces: Region[] = [];
  const copy: Region = { length, width, way, pieces, parent, part, isTurned, stage, isDead };
  for (const piece of region.pieces) pieces.push(copyRegion(piece, copy));
  return copy;
}

/** All regions below and with this one that the filter keeps. */
export function gather(region: Region, keep: (region: Region) => boolean, into: Region[] = []): Region[] {
  if (keep(region)) into.push(region);
  for (const piece of region.pieces) gather(piece, keep, into);
  return into;
}
