import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleRevision, quoteRevisionSchema } from './quote.ts';

export const sentQuoteSchema = quoteRevisionSchema
  .extend({
    /** Where the client answers, shown this once; null where it was sent before. */
    linkPath: z.string().nullable(),
    /** The address a mail is on its way to; null where the client has none. */
    mailTo: z.string().nullable(),
  })
  .meta({ id: 'SentQuote' });

export const sendQuote = defineContract({
  name: 'send-quote',
  method: 'POST',
  path: '/api/quote-revisions/:id/send',
  summary: 'Send a draft to the client',
  description:
    'Gives it its number, freezes the client’s document with all figures of ours and the paper’s bytes, replaces the revision before it, and mails the client where there is an address. Whole or not at all; sent again it changes nothing.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  answer: sentQuoteSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleRevision.id },
    answer: { ...exampleRevision, linkPath: `/offers/${'x'.repeat(43)}`, mailTo: 'greta@client.example' },
  },
});
