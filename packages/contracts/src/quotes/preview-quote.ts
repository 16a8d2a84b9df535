import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { clientDocumentSchema, exampleDocument } from './client-document.ts';
import { exampleRevision } from './quote.ts';

export const previewQuote = defineContract({
  name: 'preview-quote',
  method: 'GET',
  path: '/api/quote-revisions/:id/preview',
  summary: 'See a draft as the client would get it today',
  description:
    'The client’s document as sending would freeze it now, and whom it would be mailed to. Nothing is kept; where no number has been given yet, it stands as empty.',
  tag: 'quotes',
  roles: 'anyone',
  params: recordParams,
  answer: z
    .strictObject({
      document: clientDocumentSchema,
      /** Null where the client has no address to mail to. */
      mailTo: z.string().nullable(),
    })
    .meta({ id: 'QuotePreview' }),
  example: {
    params: { id: exampleRevision.id },
    answer: { document: { ...exampleDocument, number: '' }, mailTo: 'greta@client.example' },
  },
});
