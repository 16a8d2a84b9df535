import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleSupplier } from './supplier.ts';

export const removeSupplier = defineContract({
  name: 'remove-supplier',
  method: 'DELETE',
  path: '/api/suppliers/:id',
  summary: 'Remove a supplier',
  description: 'Refused while price lists of it are kept: prices are never removed one by one.',
  tag: 'suppliers',
  roles: RECORD_KEEPERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleSupplier.id } },
});
