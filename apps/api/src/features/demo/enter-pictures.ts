import { shownPictureInputSchema } from '@scantling/contracts';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { keepPicture } from '../../pictures/picture-records.ts';
import { addShownPicture, type PictureOwner } from '../../pictures/shown-pictures.ts';
import { demoFile, demoJson } from './demo-files.ts';

const { alternativeText, caption } = shownPictureInputSchema.shape;
const words = { file: z.string(), alternativeText, caption };
const picturesSchema = z.array(
  z.union([
    z.strictObject({ ...words, design: z.string() }),
    z.strictObject({ ...words, enquiry: z.string() }),
  ]),
);
type DemoPicture = z.output<typeof picturesSchema>[number];

/** @throws PrismaClientKnownRequestError where the file names what is not there, which only a changed demo file can cause */
async function ownerOf(transaction: Prisma.TransactionClient, given: DemoPicture): Promise<PictureOwner> {
  const select = { id: true } as const;
  if ('design' in given) {
    const where = { code: given.design, isDemo: true };
    return { of: 'design', ...(await transaction.design.findFirstOrThrow({ where, select })) };
  }
  const where = { name: given.enquiry, isDemo: true };
  return { of: 'enquiry', ...(await transaction.enquiry.findFirstOrThrow({ where, select })) };
}

/** Pictures of designs and of enquiries, in the order of the file: the first of each is its cover. */
export async function enterPictures(transaction: Prisma.TransactionClient): Promise<void> {
  for (const given of picturesSchema.parse(await demoJson('pictures.json'))) {
    const owner = await ownerOf(transaction, given);
    const file = await demoFile(`pictures/${given.file}`);
    const { sha256 } = await keepPicture(transaction, file, { createdBy: 'demo', isDemo: true });
    const { alternativeText: said, caption: below } = given;
    await addShownPicture(transaction, owner, { sha256, alternativeText: said, caption: below });
  }
}
