import { costSheet as worked } from '@scantling/costing';
import { defineContract } from '../contract.ts';
import { exampleSheetInput } from '../cost-sheets/example-sheet-input.ts';
import { toWorkedCostSheet, workedCostSheetSchema } from '../cost-sheets/worked-cost-sheet.ts';
import { costSheetInputSchema } from './cost-sheet-input.ts';

export const costSheet = defineContract({
  name: 'cost-sheet',
  method: 'POST',
  path: '/api/calculations/cost-sheet',
  summary: 'Work out a cost sheet from its whole input',
  description:
    'Bill of materials, prices, shop rates and terms in; costs and price at every number of pieces out, with every derivation. Nothing is stored or looked up.',
  tag: 'calculations',
  roles: 'anyone',
  body: costSheetInputSchema,
  answer: workedCostSheetSchema,
  example: {
    body: exampleSheetInput,
    answer: toWorkedCostSheet(worked(exampleSheetInput), { withDerivations: false }),
  },
});
