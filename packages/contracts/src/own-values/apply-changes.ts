import { defineContract } from '../contract.ts';
import { exampleCostSheet } from '../cost-sheets/cost-sheet.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import {
  exampleChangesBody,
  exampleSheetChanges,
  sheetChangesBody,
  sheetChangesSchema,
} from './sheet-changes.ts';

export const applyChanges = defineContract({
  name: 'apply-changes',
  method: 'POST',
  path: '/api/cost-sheets/:id/changes',
  summary: 'Take values over, here only or everywhere they are used',
  description:
    "All or nothing. `here`: an own value of this cost sheet (or its terms, or its choice of a parameter). `everywhere`: the record behind the leaf, by that record's own rules; a price becomes a line of a new dated list, since prices are kept for good.",
  tag: 'own-values',
  roles: MAKERS,
  params: recordParams,
  body: sheetChangesBody,
  answer: sheetChangesSchema,
  needsIfMatch: true,
  example: {
    params: { id: exampleCostSheet.id },
    body: exampleChangesBody,
    answer: exampleSheetChanges,
  },
});
