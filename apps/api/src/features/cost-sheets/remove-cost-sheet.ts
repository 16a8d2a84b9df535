import { removeCostSheet } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { requireUpdated } from '../../version-match.ts';

export const answerRemoveCostSheet = handle(
  removeCostSheet,
  async ({ params: { id }, services, expectedVersion }) => {
    const { database } = services;
    const { count } = await database.costSheet.deleteMany({ where: { id, version: expectedVersion() } });
    await requireUpdated(
      count,
      'cost sheet',
      async () => (await database.costSheet.count({ where: { id } })) > 0,
    );
    return undefined;
  },
);
