import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { costSheetFields, costSheetSchema, exampleCostSheet } from './cost-sheet.ts';

const {
  id,
  title,
  designId,
  revision,
  variant,
  parameterValues,
  clientId,
  basis,
  onDate,
  quantities,
  terms,
} = exampleCostSheet;

export const editCostSheet = defineContract({
  name: 'edit-cost-sheet',
  method: 'PUT',
  path: '/api/cost-sheets/:id',
  summary: 'Change a cost sheet',
  description: 'Its variant, parameter values, basis, date, numbers of pieces, client or terms.',
  tag: 'cost-sheets',
  roles: MAKERS,
  params: recordParams,
  body: z.strictObject(costSheetFields),
  answer: costSheetSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id },
    body: { title, designId, revision, variant, parameterValues, clientId, basis, onDate, quantities, terms },
    answer: { ...exampleCostSheet, version: 2 },
  },
});
