import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleScenario, exampleScenarioFields, scenarioFields, scenarioSchema } from './scenario.ts';

export const editScenario = defineContract({
  name: 'edit-scenario',
  method: 'PUT',
  path: '/api/scenarios/:id',
  summary: 'Change a scenario',
  description: 'Its name, its note or its values.',
  tag: 'scenarios',
  roles: MAKERS,
  params: recordParams,
  body: scenarioFields,
  answer: scenarioSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleScenario.id },
    body: exampleScenarioFields,
    answer: { ...exampleScenario, version: 2 },
  },
});
