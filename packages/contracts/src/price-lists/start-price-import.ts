import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { examplePriceImport, priceImportQuery, priceImportSchema } from './price-import.ts';

export const startPriceImport = defineContract({
  name: 'start-price-import',
  method: 'POST',
  path: '/api/price-imports',
  summary: 'Send a price list as a file',
  description:
    'CSV or XLSX of at most 20 MB, as multipart/form-data; what the list says of itself is in the query. Reading goes on afterwards: ask for the import until its status is no longer "reading". Nothing changes before it is applied.',
  tag: 'price-lists',
  roles: RECORD_KEEPERS,
  query: priceImportQuery,
  takesFile: true,
  answer: priceImportSchema,
  status: 202,
  example: {
    query: { supplierId: examplePriceImport.supplierId, validFrom: examplePriceImport.validFrom },
    answer: { ...examplePriceImport, status: 'reading' },
  },
});
