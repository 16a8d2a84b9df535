import { costSheet } from '@scantling/costing';
import { defineContract } from '../contract.ts';
import { exampleSheetInput } from '../cost-sheets/example-sheet-input.ts';
import { toWorkedCostSheet } from '../cost-sheets/worked-cost-sheet.ts';
import { workingQuery } from '../figures.ts';
import { recordParams } from '../record.ts';
import { exampleScenario } from './scenario.ts';
import { toWhatIf, workedWhatIfSchema } from './worked-what-if.ts';

export const workOutScenario = defineContract({
  name: 'work-out-scenario',
  method: 'GET',
  path: '/api/scenarios/:id/figures',
  summary: 'Work out a scenario',
  description:
    'On its cost sheet as it is today: results as they stand and as they would be, with the differences. A leaf that the sheet does not rest on any more is named in `gone`.',
  tag: 'scenarios',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery,
  answer: workedWhatIfSchema,
  example: {
    params: { id: exampleScenario.id },
    answer: toWhatIf(
      toWorkedCostSheet(costSheet(exampleSheetInput), { withDerivations: true }),
      { 'material/ASH-4/yield': '0.8' },
      { withDerivations: false },
    ),
  },
});
