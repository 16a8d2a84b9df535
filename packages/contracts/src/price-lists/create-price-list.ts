import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import {
  exampleLineFields,
  examplePriceList,
  priceLineFields,
  priceListSchema,
  priceListTerms,
} from './price-list.ts';

export const createPriceList = defineContract({
  name: 'create-price-list',
  method: 'POST',
  path: '/api/price-lists',
  summary: 'Enter a price list by hand',
  description:
    'Whole or not at all. Prices are kept for good: a correction is another list, later or of the same day.',
  tag: 'price-lists',
  roles: RECORD_KEEPERS,
  body: priceListTerms.extend({ lines: z.array(priceLineFields).min(1).max(5000) }),
  answer: priceListSchema,
  status: 201,
  idempotent: true,
  example: {
    body: {
      supplierId: examplePriceList.supplierId,
      name: examplePriceList.name,
      validFrom: examplePriceList.validFrom,
      lines: [exampleLineFields],
    },
    answer: examplePriceList,
  },
});
