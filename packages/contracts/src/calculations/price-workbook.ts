import { defineContract } from '../contract.ts';
import { XLSX_TYPE } from '../designs/export-bill.ts';
import { examplePriceBody, price } from './price.ts';

export const priceWorkbook = defineContract({
  name: 'price-workbook',
  method: 'POST',
  path: '/api/calculations/price/workbook',
  summary: 'Price from cost, as a spreadsheet that calculates',
  description: 'What the calculation answers, as XLSX with a formula for every number.',
  tag: 'calculations',
  roles: 'anyone',
  body: price.body,
  givesFile: [XLSX_TYPE],
  example: { body: examplePriceBody },
});
