import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import {
  exampleOverheadAmount,
  exampleOverheadAmountInput,
  overheadAmountInputSchema,
  overheadAmountSchema,
} from './overhead-amount.ts';

export const editOverheadAmount = defineContract({
  name: 'edit-overhead-amount',
  method: 'PUT',
  path: '/api/overhead/amounts/:id',
  summary: 'Change a yearly amount',
  description:
    'Takes the whole record. An amount whose home is a rate must say which part of rates recovers it.',
  tag: 'overhead',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: overheadAmountInputSchema,
  answer: overheadAmountSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleOverheadAmount.id },
    body: exampleOverheadAmountInput,
    answer: { ...exampleOverheadAmount, version: 2 },
  },
});
