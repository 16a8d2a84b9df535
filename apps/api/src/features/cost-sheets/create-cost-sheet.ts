import { createCostSheet } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { toCostSheet, toData, WITH_NAMES } from './cost-sheet-records.ts';

export const answerCreateCostSheet = handle(createCostSheet, async ({ body, services }) =>
  services.database.$transaction(async (transaction) => {
    const data = await toData(transaction, body);
    return toCostSheet(await transaction.costSheet.create({ data, include: WITH_NAMES }));
  }),
);
