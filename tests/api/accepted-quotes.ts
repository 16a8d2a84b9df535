import type { QuotingWorkshop } from './quoting-workshop.ts';
import { postAs, sendQuote } from './sent-quotes.ts';

export const SCHEDULE = [
  { id: 'deposit', label: 'On acceptance', share: '0.3', due: 'on-acceptance' },
  { id: 'rest', label: 'On delivery', share: '0.7', due: 'on-delivery' },
];

/** A quote that was sent and accepted. @returns its ids and what it came to with tax */
export async function acceptedQuote(test: QuotingWorkshop, title: string, change: object = {}) {
  const { id, version, quoteId } = await sendQuote(test, title, { schedule: SCHEDULE, ...change });
  const by = { name: 'Greta L.', how: 'by phone' };
  const { body } = await postAs(test, `/api/quote-revisions/${id}/accept`, by, version).expect(200);
  return { quoteId, revisionId: id, total: Number(body.total) };
}
