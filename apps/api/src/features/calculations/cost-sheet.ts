import { costSheet, toWorkedCostSheet } from '@scantling/contracts';
import { costSheet as workOut } from '@scantling/costing';
import { handle } from '../../handle.ts';

export const answerCostSheet = handle(costSheet, async ({ body }) =>
  toWorkedCostSheet(workOut(body), { withDerivations: true }),
);
