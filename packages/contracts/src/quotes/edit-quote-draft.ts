import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleRevision, quoteFields, quoteRevisionSchema } from './quote.ts';
import { quoteDraftSchema } from './quote-draft.ts';

const { id, title, clientId, draft } = exampleRevision;

export const editQuoteDraft = defineContract({
  name: 'edit-quote-draft',
  method: 'PUT',
  path: '/api/quote-revisions/:id',
  summary: 'Change a draft',
  description:
    'The whole draft, with title, client and enquiry of its quote (the title of an addition is its own); the client stays once a revision has been sent. Lines from designs follow their cost sheets until the draft is sent.',
  tag: 'quotes',
  roles: MAKERS,
  params: recordParams,
  body: z.strictObject({ ...quoteFields, draft: quoteDraftSchema }),
  answer: quoteRevisionSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id },
    body: { title, clientId, enquiryId: null, draft },
    answer: {
      ...exampleRevision,
      number: null,
      state: 'draft',
      sentAt: null,
      validUntil: null,
      total: null,
      paperId: null,
      document: null,
      documentHash: null,
    },
  },
});
