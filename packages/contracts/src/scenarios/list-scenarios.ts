import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleScenario, scenarioSchema } from './scenario.ts';

export const listScenarios = defineContract({
  name: 'list-scenarios',
  method: 'GET',
  path: '/api/cost-sheets/:id/scenarios',
  summary: 'List the scenarios of a cost sheet',
  description: 'By name. A sheet keeps at most 50.',
  tag: 'scenarios',
  roles: 'anyone',
  params: recordParams,
  answer: z.strictObject({ items: z.array(scenarioSchema) }),
  example: { params: { id: exampleScenario.costSheetId }, answer: { items: [exampleScenario] } },
});
