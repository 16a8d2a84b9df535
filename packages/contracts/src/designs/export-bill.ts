import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleDesign } from './design.ts';

export const CSV_TYPE = 'text/csv; charset=utf-8';
export const XLSX_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

export const exportBill = defineContract({
  name: 'export-bill',
  method: 'GET',
  path: '/api/designs/:id/bill-file',
  summary: 'Write a bill of materials to a file',
  description: 'Reading the file back gives the same bill.',
  tag: 'designs',
  roles: 'anyone',
  params: recordParams,
  query: z.strictObject({ format: z.enum(['csv', 'xlsx']).default('csv') }),
  givesFile: [CSV_TYPE, XLSX_TYPE],
  example: { params: { id: exampleDesign.id }, query: { format: 'csv' } },
});
