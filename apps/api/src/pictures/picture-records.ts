import type { PictureRecord } from '@scantling/contracts';
import type { Prisma } from '../generated/prisma/client.ts';
import { fieldProblem, notFound } from '../problems/request-problem.ts';
import { type RedrawnPicture, redrawPicture } from './redraw-picture.ts';

// Each drawing takes a core and up to some hundred megabytes; others wait their turn.
const MOST_AT_ONCE = 2;
let drawing = 0;
const waiting: (() => void)[] = [];

async function inTurn<T>(work: () => Promise<T>): Promise<T> {
  if (drawing >= MOST_AT_ONCE) await new Promise<void>((resolve) => waiting.push(resolve));
  else drawing += 1;
  try {
    return await work();
  } finally {
    const next = waiting.shift();
    if (next === undefined) drawing -= 1;
    else next();
  }
}

/**
 * Draws a picture from a file and keeps it, once however often it is sent. What belongs to the demo becomes the
 * workshop's own when somebody sends the same.
 * @throws RequestProblem input-invalid naming `file`
 */
export async function keepPicture(
  database: Prisma.TransactionClient,
  file: Uint8Array,
  { createdBy, isDemo = false }: { createdBy: string; isDemo?: boolean },
): Promise<PictureRecord> {
  const drawn: RedrawnPicture = await inTurn(() => redrawPicture(file));
  const data = { ...drawn, createdBy, isDemo };
  await database.picture.createMany({ data, skipDuplicates: true });
  const { sha256, mediaType, width, height } = drawn;
  if (!isDemo)
    await database.picture.updateMany({ where: { sha256, isDemo: true }, data: { isDemo: false } });
  return { sha256, mediaType, width, height };
}

export type PictureSize = 'full' | 'thumbnail';

/** The bytes of a picture. @throws RequestProblem not-found */
export async function readPicture(database: Prisma.TransactionClient, sha256: string, size: PictureSize) {
  const isFull = size === 'full';
  const row = await database.picture.findUnique({
    where: { sha256 },
    select: { mediaType: true, width: true, height: true, bytes: isFull, thumbnail: !isFull },
  });
  if (row === null) throw notFound('picture');
  const { mediaType, width, height } = row;
  return { mediaType, width, height, bytes: isFull ? row.bytes : row.thumbnail };
}

/**
 * Makes sure that pictures a record names are there.
 * @param used by the path of the field that names each
 * @throws RequestProblem input-invalid naming the first that is not
 */
export async function requirePictures(
  database: Prisma.TransactionClient,
  used: readonly { field: string; sha256: string }[],
): Promise<void> {
  const hashes = used.map(({ sha256 }) => sha256);
  const found = await database.picture.findMany({
    where: { sha256: { in: hashes } },
    select: { sha256: true },
  });
  const known = new Set(found.map(({ sha256 }) => sha256));
  const missing = used.find(({ sha256 }) => !known.has(sha256));
  if (missing !== undefined)
    throw fieldProblem(missing.field, 'is no picture that was sent', 'Send the picture first.');
}

/** Removes the demo's pictures; those that records which stay use become the workshop's own. */
export async function removeDemoPictures(
  transaction: Prisma.TransactionClient,
  kept: readonly string[],
): Promise<void> {
  const where = { isDemo: true, sha256: { in: [...kept] } };
  await transaction.picture.updateMany({ where, data: { isDemo: false } });
  await transaction.picture.deleteMany({ where: { isDemo: true } });
}
