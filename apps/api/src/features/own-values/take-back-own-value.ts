import { takeBackOwnValue } from '@scantling/contracts';
import { undatedKey } from '@scantling/figures';
import { handle } from '../../handle.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { findCostSheet } from '../cost-sheets/cost-sheet-records.ts';
import { keepOnSheet } from './carry-out.ts';

export const answerTakeBackOwnValue = handle(
  takeBackOwnValue,
  async ({ params, query, expectedVersion, services }) =>
    services.database.$transaction(async (transaction) => {
      const sheet = await findCostSheet(transaction, params.id);
      if (sheet === null) throw notFound('cost sheet');
      const ownValues = sheet.ownValues.filter(({ leaf }) => undatedKey(leaf) !== undatedKey(query.leaf));
      if (ownValues.length === sheet.ownValues.length)
        throw fieldProblem(
          'query.leaf',
          'has no own value on this sheet',
          'Read the sheet again: it may have been taken back already.',
        );
      return keepOnSheet(transaction, sheet, expectedVersion(), { ...sheet, ownValues });
    }),
);
