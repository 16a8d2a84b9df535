import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleSupplier, exampleSupplierFields, supplierFields, supplierSchema } from './supplier.ts';

export const createSupplier = defineContract({
  name: 'create-supplier',
  method: 'POST',
  path: '/api/suppliers',
  summary: 'Enter a supplier',
  description: 'Its code must be new.',
  tag: 'suppliers',
  roles: RECORD_KEEPERS,
  body: supplierFields,
  answer: supplierSchema,
  status: 201,
  idempotent: true,
  givesEtag: true,
  example: { body: exampleSupplierFields, answer: exampleSupplier },
});
