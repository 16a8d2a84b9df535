import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordId } from '../record.ts';
import { exampleQuoteSummary, quoteSummarySchema } from './quote.ts';
import { quoteStateSchema } from './quote-terms.ts';

export const listQuotes = defineContract({
  name: 'list-quotes',
  method: 'GET',
  path: '/api/quotes',
  summary: 'List the quotes',
  description:
    'Newest first; those in one state with `state` (as of today), those of one client with `clientId`.',
  tag: 'quotes',
  roles: 'anyone',
  query: pageQuery.extend({
    state: quoteStateSchema.optional(),
    clientId: recordId.optional(),
    enquiryId: recordId.optional(),
    text: z.string().trim().max(100).optional().meta({ description: 'Part of number, title or client' }),
  }),
  answer: pageOf(quoteSummarySchema),
  example: { query: { state: 'sent' }, answer: { items: [exampleQuoteSummary], next: null } },
});
