import { defineContract } from '../contract.ts';
import { XLSX_TYPE } from '../designs/export-bill.ts';

export const downloadOverheadRecovery = defineContract({
  name: 'download-overhead-recovery',
  method: 'GET',
  path: '/api/overhead/recovery/workbook',
  summary:
    'Download the overhead rates and where each yearly amount comes back, as a spreadsheet that calculates',
  description: 'XLSX with the rates of both pools, the proof, every input once, and the whole working.',
  tag: 'overhead',
  roles: 'anyone',
  givesFile: [XLSX_TYPE],
  example: {},
});
