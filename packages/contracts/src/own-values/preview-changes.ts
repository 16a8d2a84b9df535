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

export const previewChanges = defineContract({
  name: 'preview-changes',
  method: 'POST',
  path: '/api/cost-sheets/:id/changes/preview',
  summary: 'See what taking values over would change',
  description:
    'The same answer as apply-changes, from records that are changed and put back in one transaction: the true costs after it, what else rests on the values, and every reason why it cannot be done.',
  tag: 'own-values',
  roles: MAKERS,
  params: recordParams,
  body: sheetChangesBody,
  answer: sheetChangesSchema,
  example: {
    params: { id: exampleCostSheet.id },
    body: exampleChangesBody,
    answer: exampleSheetChanges,
  },
});
