import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import {
  exampleOverheadAmount,
  exampleOverheadAmountInput,
  overheadAmountInputSchema,
  overheadAmountSchema,
} from './overhead-amount.ts';

export const createOverheadAmount = defineContract({
  name: 'create-overhead-amount',
  method: 'POST',
  path: '/api/overhead/amounts',
  summary: 'Enter a yearly amount',
  description: 'An amount whose home is a rate must say which part of rates recovers it.',
  tag: 'overhead',
  roles: RECORD_KEEPERS,
  body: overheadAmountInputSchema,
  answer: overheadAmountSchema,
  status: 201,
  givesEtag: true,
  example: { body: exampleOverheadAmountInput, answer: exampleOverheadAmount },
});
