import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleRevision } from './quote.ts';

export const renewOfferLink = defineContract({
  name: 'renew-offer-link',
  method: 'POST',
  path: '/api/quote-revisions/:id/link',
  summary: 'Make a new link for the client',
  description:
    'Only a hash of each link is kept, so a lost one cannot be shown again: the new one takes its place and the earlier one stops working.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  answer: z.strictObject({ linkPath: z.string() }),
  example: { params: { id: exampleRevision.id }, answer: { linkPath: `/offers/${'x'.repeat(43)}` } },
});
