import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { examplePriceImport, priceImportSchema } from './price-import.ts';

export const getPriceImport = defineContract({
  name: 'get-price-import',
  method: 'GET',
  path: '/api/price-imports/:id',
  summary: 'Read how an import stands',
  description: 'Progress while it is read, then how many prices are new, dearer, cheaper and so on.',
  tag: 'price-lists',
  roles: 'anyone',
  params: recordParams,
  answer: priceImportSchema,
  example: { params: { id: examplePriceImport.id }, answer: examplePriceImport },
});
