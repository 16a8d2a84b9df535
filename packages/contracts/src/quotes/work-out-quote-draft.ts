import { draftTotals, quoteMargin } from '@scantling/quoting';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { workingQuery } from '../figures.ts';
import { exampleDraft, quoteDraftSchema } from './quote-draft.ts';
import { chosenSchema } from './quote-terms.ts';
import { toWorkedQuote, workedQuoteSchema } from './worked-quote.ts';

const exampleTotals = draftTotals(
  exampleDraft,
  new Map([['bench', { costSheetId: 'sheet', title: 'Hall benches', netPrice: '2620' }]]),
);

export const workOutQuoteDraft = defineContract({
  name: 'work-out-quote-draft',
  method: 'POST',
  path: '/api/quote-drafts/figures',
  summary: 'Work out a draft that is not saved',
  description:
    'The same totals and margin as for a saved draft, while it is being written: nothing is kept. Lines from designs follow their cost sheets as they are today.',
  tag: 'quotes',
  roles: 'anyone',
  query: workingQuery,
  body: z.strictObject({ draft: quoteDraftSchema, chosen: chosenSchema.default([]) }),
  answer: workedQuoteSchema,
  example: {
    body: { draft: exampleDraft },
    answer: toWorkedQuote(
      exampleTotals,
      quoteMargin(exampleTotals, new Map(), exampleDraft),
      { isFrozen: false, currency: 'EUR' },
      { withDerivations: false },
    ),
  },
});
