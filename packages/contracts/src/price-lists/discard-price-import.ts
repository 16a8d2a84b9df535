import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { examplePriceImport, priceImportSchema } from './price-import.ts';

export const discardPriceImport = defineContract({
  name: 'discard-price-import',
  method: 'POST',
  path: '/api/price-imports/:id/discard',
  summary: 'Drop an import',
  description: 'Its rows are forgotten; prices stay as they are.',
  tag: 'price-lists',
  roles: RECORD_KEEPERS,
  params: recordParams,
  answer: priceImportSchema,
  example: { params: { id: examplePriceImport.id }, answer: { ...examplePriceImport, status: 'discarded' } },
});
