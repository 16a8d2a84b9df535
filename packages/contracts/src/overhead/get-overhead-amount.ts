import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleOverheadAmount, overheadAmountSchema } from './overhead-amount.ts';

export const getOverheadAmount = defineContract({
  name: 'get-overhead-amount',
  method: 'GET',
  path: '/api/overhead/amounts/:id',
  summary: 'Read a yearly amount',
  description: 'With its version as ETag, which a change must name.',
  tag: 'overhead',
  roles: 'anyone',
  params: recordParams,
  answer: overheadAmountSchema,
  givesEtag: true,
  example: { params: { id: exampleOverheadAmount.id }, answer: exampleOverheadAmount },
});
