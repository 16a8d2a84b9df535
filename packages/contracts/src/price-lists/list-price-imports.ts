import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordId } from '../record.ts';
import { examplePriceImport, priceImportSchema } from './price-import.ts';

/** open: still to be read, matched or decided. ended: taken over, dropped, failed, or nothing was to be done. */
export const IMPORT_STATES = ['open', 'ended'] as const;

export const listPriceImports = defineContract({
  name: 'list-price-imports',
  method: 'GET',
  path: '/api/price-imports',
  summary: 'List imports of price lists',
  description:
    'Newest first; of all suppliers or of one, under way (`state=open`) or finished (`state=ended`). So one that was left is found again.',
  tag: 'price-lists',
  roles: 'anyone',
  query: pageQuery.extend({ supplierId: recordId.optional(), state: z.enum(IMPORT_STATES).optional() }),
  answer: pageOf(priceImportSchema),
  example: { query: { state: 'open' }, answer: { items: [examplePriceImport], next: null } },
});
