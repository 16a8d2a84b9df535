import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleScenario } from './scenario.ts';

export const removeScenario = defineContract({
  name: 'remove-scenario',
  method: 'DELETE',
  path: '/api/scenarios/:id',
  summary: 'Remove a scenario',
  description: 'The cost sheet stays as it is.',
  tag: 'scenarios',
  roles: MAKERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleScenario.id } },
});
