import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleSupplier, exampleSupplierFields, supplierFields, supplierSchema } from './supplier.ts';

export const editSupplier = defineContract({
  name: 'edit-supplier',
  method: 'PUT',
  path: '/api/suppliers/:id',
  summary: 'Change a supplier',
  description: 'Takes the whole supplier; what is left out gets its default.',
  tag: 'suppliers',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: supplierFields,
  answer: supplierSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleSupplier.id },
    body: exampleSupplierFields,
    answer: { ...exampleSupplier, version: 2 },
  },
});
