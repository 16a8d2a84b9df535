import { draftTotals, quoteMargin } from '@scantling/quoting';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { workingQuery } from '../figures.ts';
import { recordParams } from '../record.ts';
import { exampleRevision } from './quote.ts';
import { exampleDraft } from './quote-draft.ts';
import { chosenSchema, partId } from './quote-terms.ts';
import { toWorkedQuote, workedQuoteSchema } from './worked-quote.ts';

const exampleTotals = draftTotals(
  exampleDraft,
  new Map([['bench', { costSheetId: 'sheet', title: 'Hall benches', netPrice: '2620' }]]),
);

/** `chosen=line-1,line-4`: options and alternates, as ids with commas between. */
const chosenQuery = z
  .string()
  .max(2000)
  .default('')
  .transform((text) => text.split(',').filter((id) => id !== ''))
  .pipe(chosenSchema);

export const workOutQuote = defineContract({
  name: 'work-out-quote',
  method: 'GET',
  path: '/api/quote-revisions/:id/figures',
  summary: 'Work out a quote for us',
  description:
    'Totals, and the margin the client never sees. A draft follows its cost sheets as they are today; what was sent is answered as it was frozen, with what was accepted chosen. `working=true` brings the derivations.',
  tag: 'quotes',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery.extend({ chosen: chosenQuery }),
  answer: workedQuoteSchema,
  example: {
    params: { id: exampleRevision.id },
    answer: toWorkedQuote(
      exampleTotals,
      quoteMargin(exampleTotals, new Map(), exampleDraft),
      { isFrozen: false, currency: 'EUR' },
      { withDerivations: false },
    ),
  },
});

export const quoteLineParams = recordParams.extend({ lineId: partId });
