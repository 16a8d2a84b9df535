import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { exampleSupplier, supplierSchema } from './supplier.ts';

export const listSuppliers = defineContract({
  name: 'list-suppliers',
  method: 'GET',
  path: '/api/suppliers',
  summary: 'List suppliers',
  description: 'By code. `search` finds part of a code or name.',
  tag: 'suppliers',
  roles: 'anyone',
  query: pageQuery.extend({ search: z.string().trim().max(100).optional() }),
  answer: pageOf(supplierSchema),
  example: { answer: { items: [exampleSupplier], next: null } },
});
