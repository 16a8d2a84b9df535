import { editCostSheet } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { requireUpdated } from '../../version-match.ts';
import { findCostSheet, toData } from './cost-sheet-records.ts';

export const answerEditCostSheet = handle(
  editCostSheet,
  async ({ params: { id }, body, services, expectedVersion }) =>
    services.database.$transaction(async (transaction) => {
      const version = expectedVersion();
      const data = await toData(transaction, body);
      const { count } = await transaction.costSheet.updateMany({
        where: { id, version },
        data: { ...data, version: version + 1 },
      });
      await requireUpdated(
        count,
        'cost sheet',
        async () => (await transaction.costSheet.count({ where: { id } })) > 0,
      );
      const sheet = await findCostSheet(transaction, id);
      if (sheet === null) throw notFound('cost sheet');
      return sheet;
    }),
);
