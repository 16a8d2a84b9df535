import { editWorkshop } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { requirePictures } from '../../pictures/picture-records.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { requireUpdated } from '../../version-match.ts';

export const answerEditWorkshop = handle(editWorkshop, ({ body, expectedVersion, services }) =>
  services.database.$transaction(async (transaction) => {
    const { logo } = body.settings.letterhead;
    if (logo !== null)
      await requirePictures(transaction, [{ field: 'settings.letterhead.logo', sha256: logo.sha256 }]);
    const { count } = await transaction.workshop.updateMany({
      where: { id: 1, version: expectedVersion() },
      data: { ...body, version: { increment: 1 } },
    });
    await requireUpdated(count, 'workshop', async () => (await transaction.workshop.count()) > 0);
    return readWorkshop(transaction);
  }),
);
