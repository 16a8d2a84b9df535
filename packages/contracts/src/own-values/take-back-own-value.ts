import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { costSheetSchema, exampleCostSheet } from '../cost-sheets/cost-sheet.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleOwnValue, leafKey } from './own-value.ts';

export const takeBackOwnValue = defineContract({
  name: 'take-back-own-value',
  method: 'DELETE',
  path: '/api/cost-sheets/:id/own-values',
  summary: 'Take an own value of a cost sheet back',
  description: 'From then on the sheet follows the record again.',
  tag: 'own-values',
  roles: MAKERS,
  params: recordParams,
  query: z.strictObject({ leaf: leafKey }),
  answer: costSheetSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleCostSheet.id },
    query: { leaf: exampleOwnValue.leaf },
    answer: { ...exampleCostSheet, version: 2 },
  },
});
