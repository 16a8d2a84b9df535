import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordId } from '../record.ts';
import { exampleSupplierItem, supplierItemSchema } from './supplier-item.ts';

export const listSupplierItems = defineContract({
  name: 'list-supplier-items',
  method: 'GET',
  path: '/api/supplier-items',
  summary: "List suppliers' articles",
  description:
    'By code; those of one supplier with `supplierId`. `linked` keeps those that are a material here ("true") or are not yet ("false").',
  tag: 'price-lists',
  roles: 'anyone',
  query: pageQuery.extend({
    supplierId: recordId.optional(),
    linked: z.enum(['true', 'false']).optional(),
    search: z.string().trim().max(100).optional(),
  }),
  answer: pageOf(supplierItemSchema),
  example: {
    query: { supplierId: exampleSupplierItem.supplierId },
    answer: { items: [exampleSupplierItem], next: null },
  },
});
