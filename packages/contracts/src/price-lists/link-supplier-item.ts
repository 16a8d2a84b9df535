import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordId, recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleSupplierItem, supplierItemSchema } from './supplier-item.ts';

export const linkSupplierItem = defineContract({
  name: 'link-supplier-item',
  method: 'PUT',
  path: '/api/supplier-items/:id/material',
  summary: "Say which material a supplier's article is",
  description: 'All its prices, old and new, then price that material; null unlinks it.',
  tag: 'price-lists',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: z.strictObject({ materialId: recordId.nullable() }),
  answer: supplierItemSchema,
  example: {
    params: { id: exampleSupplierItem.id },
    body: { materialId: exampleSupplierItem.material.id },
    answer: exampleSupplierItem,
  },
});
