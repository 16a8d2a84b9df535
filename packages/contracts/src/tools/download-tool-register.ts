import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { bookYear } from './get-tool-rates.ts';

export const REGISTER_MEDIA_TYPES = {
  csv: 'text/csv',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
} as const;

export const downloadToolRegister = defineContract({
  name: 'download-tool-register',
  method: 'GET',
  path: '/api/tool-register/file',
  summary: 'Download the register of tools of one year',
  description: 'For the accountant, as CSV or XLSX; amounts are rounded to the minor unit of the currency.',
  tag: 'tools',
  roles: 'anyone',
  query: z.strictObject({ year: bookYear, format: z.enum(['csv', 'xlsx']) }),
  givesFile: [REGISTER_MEDIA_TYPES.csv, REGISTER_MEDIA_TYPES.xlsx],
  example: { query: { year: 2026, format: 'xlsx' } },
});
