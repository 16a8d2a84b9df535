import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageQuery } from '../page.ts';
import { examplePriceImpact, priceImpactSchema } from './price-impact.ts';

export const listPriceImpacts = defineContract({
  name: 'list-price-impacts',
  method: 'GET',
  path: '/api/price-impacts',
  summary: 'List the price lists whose impact waits for a decision',
  description: 'The newest list first; those with nothing left to decide are left out.',
  tag: 'price-impacts',
  roles: 'anyone',
  query: pageQuery,
  answer: z.strictObject({
    items: z.array(priceImpactSchema),
    next: z.string().nullable(),
    /** Open quotes with something left to decide, each counted once. */
    openQuotes: z.number().int(),
  }),
  example: { answer: { items: [examplePriceImpact], next: null, openQuotes: 1 } },
});
