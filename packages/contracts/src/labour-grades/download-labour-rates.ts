import { defineContract } from '../contract.ts';
import { XLSX_TYPE } from '../designs/export-bill.ts';

export const downloadLabourRates = defineContract({
  name: 'download-labour-rates',
  method: 'GET',
  path: '/api/labour-rates/workbook',
  summary: 'Download what an hour of each labour grade costs as a spreadsheet that calculates',
  description: 'XLSX with a row for each grade, every input once, and the whole working.',
  tag: 'labour-grades',
  roles: 'anyone',
  givesFile: [XLSX_TYPE],
  example: {},
});
