/** A rectangle in millionths, lower-left corner and sides. */
export type Rectangle = Readonly<{ x: number; y: number; length: number; width: number }>;

/** Cuts across the length stand at an x, cuts along it at a y. */
type Way = 'crosscut' | 'rip';

const across: Record<Way, Way> = { crosscut: 'rip', rip: 'crosscut' };

function from(rectangle: Rectangle, way: Way): number {
  return way === 'crosscut' ? rectangle.x : rectangle.y;
}

function to(rectangle: Rectangle, way: Way): number {
  return way === 'crosscut' ? rectangle.x + rectangle.length : rectangle.y + rectangle.width;
}

/** The groups that edge-to-edge cuts of this way, each one kerf wide, part from one another. */
function parted(rectangles: readonly Rectangle[], way: Way, kerf: number): Rectangle[][] {
  const groups: Rectangle[][] = [];
  let end = Number.NEGATIVE_INFINITY;
  for (const rectangle of [...rectangles].sort((a, b) => from(a, way) - from(b, way))) {
    const group = groups.at(-1);
    if (group === undefined || from(rectangle, way) >= end + kerf) groups.push([rectangle]);
    else group.push(rectangle);
    end = Math.max(end, to(rectangle, way));
  }
  return groups;
}

function freed(
  rectangles: readonly Rectangle[],
  way: Way,
  kerf: number,
  stages: number,
  isStuck: boolean,
): boolean {
  if (rectangles.length <= 1) return true;
  if (stages === 0) return false;
  const groups = parted(rectangles, way, kerf);
  // Two ways in a row that part nothing: no cut goes through.
  if (groups.length === 1 && isStuck) return false;
  return groups.every((group) => freed(group, across[way], kerf, stages - 1, groups.length === 1));
}

/**
 * Whether cuts from edge to edge, each one kerf wide, free every rectangle. A cut that can be made never stands in the
 * way of another, so that all of one way may be made at once. With limited stages the last waste around a part is
 * trimmed off beyond them.
 */
export function isFreeByCuts(
  rectangles: readonly Rectangle[],
  kerf: number,
  stages: number,
  firstCut: Way | 'either',
): boolean {
  const ways: readonly Way[] = firstCut === 'either' ? ['crosscut', 'rip'] : [firstCut];
  return ways.some((way) => freed(rectangles, way, kerf, stages, false));
}
