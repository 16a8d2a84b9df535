import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { MAKERS } from '../roles.ts';
import { costSheetFields, costSheetSchema, exampleCostSheet } from './cost-sheet.ts';

const { title, designId, revision, variant, parameterValues, clientId, basis, onDate, quantities, terms } =
  exampleCostSheet;

export const createCostSheet = defineContract({
  name: 'create-cost-sheet',
  method: 'POST',
  path: '/api/cost-sheets',
  summary: 'Make a cost sheet',
  description: 'For a design, at one or more numbers of pieces.',
  tag: 'cost-sheets',
  roles: MAKERS,
  body: z.strictObject(costSheetFields),
  answer: costSheetSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: {
    body: { title, designId, revision, variant, parameterValues, clientId, basis, onDate, quantities, terms },
    answer: exampleCostSheet,
  },
});
