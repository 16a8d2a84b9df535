import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleScenario, exampleScenarioFields, scenarioFields, scenarioSchema } from './scenario.ts';

export const createScenario = defineContract({
  name: 'create-scenario',
  method: 'POST',
  path: '/api/cost-sheets/:id/scenarios',
  summary: 'Keep values tried on a cost sheet under a name',
  description: 'Nothing of the sheet changes. Names are unique on a sheet.',
  tag: 'scenarios',
  roles: MAKERS,
  params: recordParams,
  body: scenarioFields,
  answer: scenarioSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: {
    params: { id: exampleScenario.costSheetId },
    body: exampleScenarioFields,
    answer: exampleScenario,
  },
});
