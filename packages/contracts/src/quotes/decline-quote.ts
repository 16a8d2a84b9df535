import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleRevision, quoteRevisionSchema } from './quote.ts';

export const declineQuote = defineContract({
  name: 'decline-quote',
  method: 'POST',
  path: '/api/quote-revisions/:id/decline',
  summary: 'Write down that the client declined',
  description: 'For a client who said no on paper, by phone or by mail.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  body: z.strictObject({ reason: z.string().trim().max(2000).default('') }),
  answer: quoteRevisionSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleRevision.id },
    body: { reason: 'Too late for the move.' },
    answer: { ...exampleRevision, state: 'declined' },
  },
});
