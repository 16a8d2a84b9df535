import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { XLSX_TYPE } from '../designs/export-bill.ts';
import { bookYear } from './get-tool-rates.ts';

export const downloadToolRates = defineContract({
  name: 'download-tool-rates',
  method: 'GET',
  path: '/api/tool-rates/workbook',
  summary: 'Download what an hour of every tool costs as a spreadsheet that calculates',
  description:
    'XLSX with a row for each tool on its three bases, the lines each rate is made of, every input once, and the whole working. The book basis is for the year named, this year where none is.',
  tag: 'tools',
  roles: 'anyone',
  query: z.strictObject({ year: bookYear.optional() }),
  givesFile: [XLSX_TYPE],
  example: { query: { year: 2026 } },
});
