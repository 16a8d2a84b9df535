import { defineContract } from '../contract.ts';
import { XLSX_TYPE } from '../designs/export-bill.ts';
import { recordParams } from '../record.ts';
import { exampleCostSheet } from './cost-sheet.ts';

export const downloadCostSheet = defineContract({
  name: 'download-cost-sheet',
  method: 'GET',
  path: '/api/cost-sheets/:id/workbook',
  summary: 'Download a cost sheet as a spreadsheet that calculates',
  description:
    'XLSX with a formula for every number: cost and price in front, then materials, work and parts, every input once with its name and source, and the whole working. A changed input moves all that rests on it, as the same change does here; which offer is taken and which lines there are stays as it is.',
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  givesFile: [XLSX_TYPE],
  example: { params: { id: exampleCostSheet.id } },
});
