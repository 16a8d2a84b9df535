import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { exampleCostSheet } from '../cost-sheets/cost-sheet.ts';
import { nonNegativeDecimalText } from '../decimal-text.ts';
import { workingQuery } from '../figures.ts';
import { leafKey } from '../own-values/own-value.ts';
import { recordParams } from '../record.ts';
import { MOST_CHANGES } from './scenario.ts';
import { workOutScenario } from './work-out-scenario.ts';
import { workedWhatIfSchema } from './worked-what-if.ts';

export const workOutWhatIf = defineContract({
  name: 'work-out-what-if',
  method: 'POST',
  path: '/api/cost-sheets/:id/what-if',
  summary: 'Work out a cost sheet with other values',
  description:
    'Any leaf of its figures by its key, as many as wanted. Supplier, stock and revision chosen stay; whole packs, breaks and roundings follow. Nothing is stored.',
  tag: 'scenarios',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery,
  body: z.strictObject({
    changes: z
      .record(leafKey, nonNegativeDecimalText)
      .refine((changes) => Object.keys(changes).length <= MOST_CHANGES, {
        error: 'names too many leaves',
        params: { mend: `Change at most ${MOST_CHANGES} at once.` },
      }),
  }),
  answer: workedWhatIfSchema,
  example: {
    params: { id: exampleCostSheet.id },
    body: { changes: { 'material/ASH-4/yield': '0.8' } },
    answer: workOutScenario.example.answer as z.input<typeof workedWhatIfSchema>,
  },
});
