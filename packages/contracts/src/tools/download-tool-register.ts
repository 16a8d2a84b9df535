import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { XLSX_TYPE } from '../designs/export-bill.ts';
import { bookYear } from './get-tool-rates.ts';

export const REGISTER_MEDIA_TYPES = {
  csv: 'text/csv',
  xlsx: XLSX_TYPE,
} as const;

export const downloadToolRegister = defineContract({
  name: 'download-tool-register',
  method: 'GET',
  path: '/api/tool-register/file',
  summary: 'Download the register of tools of one year',
  description:
    'For the accountant. CSV holds amounts rounded to the minor unit of the currency; XLSX calculates: the register, the schedule of each tool, every input once, and the whole working.',
  tag: 'tools',
  roles: 'anyone',
  query: z.strictObject({ year: bookYear, format: z.enum(['csv', 'xlsx']) }),
  givesFile: [REGISTER_MEDIA_TYPES.csv, REGISTER_MEDIA_TYPES.xlsx],
  example: { query: { year: 2026, format: 'xlsx' } },
});
