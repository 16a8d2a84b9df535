import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleMapping, examplePriceImport, priceImportSchema, priceMappingSchema } from './price-import.ts';

export const mapPriceImport = defineContract({
  name: 'map-price-import',
  method: 'PUT',
  path: '/api/price-imports/:id/mapping',
  summary: 'Say which column is which',
  description: 'Reads the file again with that mapping and remembers it for the supplier.',
  tag: 'price-lists',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: priceMappingSchema,
  answer: priceImportSchema,
  example: {
    params: { id: examplePriceImport.id },
    body: exampleMapping,
    answer: { ...examplePriceImport, status: 'reading' },
  },
});
