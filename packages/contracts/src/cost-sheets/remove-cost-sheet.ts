import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleCostSheet } from './cost-sheet.ts';

export const removeCostSheet = defineContract({
  name: 'remove-cost-sheet',
  method: 'DELETE',
  path: '/api/cost-sheets/:id',
  summary: 'Remove a cost sheet',
  description: 'The design and the client stay.',
  tag: 'cost-sheets',
  roles: MAKERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleCostSheet.id } },
});
