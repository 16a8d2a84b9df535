import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { calendarDate, givenName, recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { singleLine } from '../single-line.ts';
import { exampleRevision, quoteRevisionSchema } from './quote.ts';
import { chosenSchema } from './quote-terms.ts';

export const acceptQuote = defineContract({
  name: 'accept-quote',
  method: 'POST',
  path: '/api/quote-revisions/:id/accept',
  summary: 'Write down that the client accepted',
  description:
    'For a client who said yes on paper, by phone or by mail: who said it and how; who wrote it down is kept too.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  body: z.strictObject({
    /** Who accepted, on the client's side. */
    name: givenName,
    how: singleLine(100).min(1),
    /** Where it was said on an earlier day. */
    onDate: calendarDate.optional(),
    remark: z.string().trim().max(2000).default(''),
    chosen: chosenSchema.default([]),
  }),
  answer: quoteRevisionSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleRevision.id },
    body: { name: 'Greta Lindqvist', how: 'by phone', chosen: ['cushion'] },
    answer: exampleRevision,
  },
});
