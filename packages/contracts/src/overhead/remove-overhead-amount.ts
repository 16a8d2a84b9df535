import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleOverheadAmount } from './overhead-amount.ts';

export const removeOverheadAmount = defineContract({
  name: 'remove-overhead-amount',
  method: 'DELETE',
  path: '/api/overhead/amounts/:id',
  summary: 'Remove a yearly amount',
  description: 'It is no longer recovered from the next cost sheet on.',
  tag: 'overhead',
  roles: RECORD_KEEPERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleOverheadAmount.id } },
});
