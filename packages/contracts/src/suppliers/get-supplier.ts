import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleSupplier, supplierSchema } from './supplier.ts';

export const getSupplier = defineContract({
  name: 'get-supplier',
  method: 'GET',
  path: '/api/suppliers/:id',
  summary: 'Read a supplier',
  description: 'Its ETag is needed to change it.',
  tag: 'suppliers',
  roles: 'anyone',
  params: recordParams,
  answer: supplierSchema,
  givesEtag: true,
  example: { params: { id: exampleSupplier.id }, answer: exampleSupplier },
});
