import {
  MOST_SHOWN_PICTURES,
  type PictureRecord,
  type ShownPictureInput,
  type ShownPictures,
  type ShownPicturesInput,
} from '@scantling/contracts';
import type { Prisma } from '../generated/prisma/client.ts';
import { fieldProblem, notFound, RequestProblem } from '../problems/request-problem.ts';
import { requireUpdated } from '../version-match.ts';
import { requirePictures } from './picture-records.ts';

type Access = Prisma.TransactionClient;

/** The record that pictures belong to. */
export type PictureOwner = Readonly<{ of: 'design' | 'enquiry'; id: string }>;

const RECORD = {
  select: { sha256: true, mediaType: true, width: true, height: true },
} as const;

/** Selects the picture that a record is known by, to be shown in lists. */
export const COVER = {
  where: { isCover: true },
  select: { sha256: true, alternativeText: true },
} as const;

/** The columns that name the owner of a picture's use. */
function ownerColumns({ of, id }: PictureOwner) {
  return of === 'design' ? { designId: id } : { enquiryId: id };
}

async function findVersion(transaction: Access, { of, id }: PictureOwner): Promise<number | null> {
  const asked = { where: { id }, select: { picturesVersion: true } };
  const row = await (of === 'design'
    ? transaction.design.findUnique(asked)
    : transaction.enquiry.findUnique(asked));
  return row?.picturesVersion ?? null;
}

/**
 * Counts a change of the owner's pictures, which also keeps other changes waiting until this one is through.
 * @param version the one the change rests on; none for a change that disturbs no other
 * @throws RequestProblem version-stale, not-found
 */
async function countChange(transaction: Access, owner: PictureOwner, version?: number): Promise<void> {
  const { of, id } = owner;
  const asked = {
    where: version === undefined ? { id } : { id, picturesVersion: version },
    data: { picturesVersion: { increment: 1 } },
  };
  const { count } = await (of === 'design'
    ? transaction.design.updateMany(asked)
    : transaction.enquiry.updateMany(asked));
  await requireUpdated(count, of, async () => (await findVersion(transaction, owner)) !== null);
}

function mediaTypeOf(text: string): PictureRecord['mediaType'] {
  return text === 'image/png' ? text : 'image/jpeg';
}

/** The pictures of a record in their order. @throws RequestProblem not-found */
export async function readShownPictures(transaction: Access, owner: PictureOwner): Promise<ShownPictures> {
  const version = await findVersion(transaction, owner);
  if (version === null) throw notFound(owner.of);
  const rows = await transaction.pictureUse.findMany({
    where: ownerColumns(owner),
    orderBy: { position: 'asc' },
    include: { picture: RECORD },
  });
  const items = rows.map(({ picture, alternativeText, caption, isCover }) => ({
    ...picture,
    mediaType: mediaTypeOf(picture.mediaType),
    alternativeText,
    caption,
    isCover,
  }));
  return { items, version };
}

/**
 * Adds a picture after the others, whoever else adds one at the same time; the first becomes the cover.
 * @throws RequestProblem not-found, input-invalid, already-exists where it is among them
 */
export async function addShownPicture(
  transaction: Access,
  owner: PictureOwner,
  given: ShownPictureInput,
): Promise<ShownPictures> {
  await countChange(transaction, owner);
  await requirePictures(transaction, [{ field: 'sha256', sha256: given.sha256 }]);
  const { items } = await readShownPictures(transaction, owner);
  if (items.some(({ sha256 }) => sha256 === given.sha256))
    throw new RequestProblem('already-exists', {
      detail: 'This very picture is among them already.',
      errors: [
        { field: 'sha256', message: 'is among the pictures already', mend: 'Choose another picture.' },
      ],
    });
  if (items.length >= MOST_SHOWN_PICTURES)
    throw fieldProblem(
      'sha256',
      `would be one more than the ${MOST_SHOWN_PICTURES} pictures there can be`,
      'Take one out first.',
    );
  const place = { position: items.length, isCover: items.length === 0 };
  await transaction.pictureUse.create({ data: { ...ownerColumns(owner), ...given, ...place } });
  return readShownPictures(transaction, owner);
}

/** @throws RequestProblem input-invalid naming the picture that is there twice, or a cover that is none of them */
function requireSound({ items, cover }: ShownPicturesInput): void {
  items.forEach(({ sha256 }, at) => {
    if (items.findIndex((one) => one.sha256 === sha256) !== at)
      throw fieldProblem(`items.${at}.sha256`, 'is among the pictures twice', 'Name each picture once.');
  });
  if (cover !== null && items.every(({ sha256 }) => sha256 !== cover))
    throw fieldProblem('cover', 'is none of the pictures', 'Name one of them, or null for the first.');
}

/**
 * Makes the list given the list kept: order, words, cover, and which there are.
 * @throws RequestProblem version-stale, not-found, input-invalid
 */
export async function arrangePictures(
  transaction: Access,
  owner: PictureOwner,
  version: number,
  given: ShownPicturesInput,
): Promise<ShownPictures> {
  requireSound(given);
  await countChange(transaction, owner, version);
  await requirePictures(
    transaction,
    given.items.map(({ sha256 }, at) => ({ field: `items.${at}.sha256`, sha256 })),
  );
  const cover = given.cover ?? given.items[0]?.sha256;
  await transaction.pictureUse.deleteMany({ where: ownerColumns(owner) });
  await transaction.pictureUse.createMany({
    data: given.items.map((item, position) => ({
      ...ownerColumns(owner),
      ...item,
      position,
      isCover: item.sha256 === cover,
    })),
  });
  return readShownPictures(transaction, owner);
}

/** Names of the pictures that any record shows. */
export async function picturesShown(transaction: Access): Promise<string[]> {
  const rows = await transaction.pictureUse.findMany({ select: { sha256: true }, distinct: ['sha256'] });
  return rows.map(({ sha256 }) => sha256);
}
