import { editWorkshop } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { requireUpdated } from '../../version-match.ts';

export const answerEditWorkshop = handle(editWorkshop, ({ body, expectedVersion, services }) =>
  services.database.$transaction(async (transaction) => {
    const { count } = await transaction.workshop.updateMany({
      where: { id: 1, version: expectedVersion() },
      data: { ...body, version: { increment: 1 } },
    });
    await requireUpdated(count, 'workshop', async () => (await transaction.workshop.count()) > 0);
    return readWorkshop(transaction);
  }),
);
