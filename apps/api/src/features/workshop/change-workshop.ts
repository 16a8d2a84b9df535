import type { editWorkshop, Workshop } from '@scantling/contracts';
import type { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { requirePictures } from '../../pictures/picture-records.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { requireUpdated } from '../../version-match.ts';

type Body = z.output<typeof editWorkshop.body>;

/** @throws RequestProblem version-stale, not-found, input-invalid where the logo is not there */
export async function changeWorkshop(
  transaction: Prisma.TransactionClient,
  version: number,
  body: Body,
): Promise<Workshop> {
  const { logo } = body.settings.letterhead;
  if (logo !== null)
    await requirePictures(transaction, [{ field: 'settings.letterhead.logo', sha256: logo.sha256 }]);
  const { count } = await transaction.workshop.updateMany({
    where: { id: 1, version },
    data: { ...body, version: { increment: 1 } },
  });
  await requireUpdated(count, 'workshop', async () => (await transaction.workshop.count()) > 0);
  return readWorkshop(transaction);
}
