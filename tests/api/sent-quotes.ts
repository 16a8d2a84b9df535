import type { Response } from 'supertest';
import { type QuotingWorkshop, quotedLines } from './quoting-workshop.ts';

export type SentQuote = {
  id: string;
  quoteId: string;
  number: string;
  version: number;
  link: string;
  hash: string;
};

/** Requests of a maker, with If-Match where a version is given. */
export function postAs(test: QuotingWorkshop, path: string, body?: object, version?: number) {
  const headers = version === undefined ? {} : { 'if-match': `"${version}"` };
  return test.request
    .post(path)
    .set({ ...test.as('maker'), ...headers })
    .send(body);
}

/** Sends the draft with this id. @returns what a client would open */
export async function sendDraft(test: QuotingWorkshop, id: string, version: number): Promise<SentQuote> {
  const { body } = await postAs(test, `/api/quote-revisions/${id}/send`, undefined, version).expect(200);
  return {
    id: body.id,
    quoteId: body.quoteId,
    number: body.number,
    version: body.version,
    link: `/api${body.linkPath}`,
    hash: body.documentHash,
  };
}

/** Puts lines into a draft. @returns the answer to the change */
export async function fillDraft(
  test: QuotingWorkshop,
  id: string,
  change: object = {},
  enquiryId: string | null = null,
): Promise<Response> {
  const { body } = await test.request.get(`/api/quote-revisions/${id}`).set(test.as('maker'));
  const draft = { ...body.draft, lines: quotedLines(test.costSheetId), ...change };
  return test.request
    .put(`/api/quote-revisions/${id}`)
    .set({ ...test.as('maker'), 'if-match': `"${body.version}"` })
    .send({ title: body.title, clientId: body.clientId, enquiryId, draft })
    .expect(200);
}

/** Begins, fills and sends a quote with the usual lines. */
export async function sendQuote(
  test: QuotingWorkshop,
  title: string,
  change: object = {},
): Promise<SentQuote> {
  const begun = { title, clientId: test.clientId, enquiryId: null };
  const { body: quote } = await postAs(test, '/api/quotes', begun).expect(201);
  const { body } = await fillDraft(test, quote.currentRevisionId, change);
  return sendDraft(test, body.id, body.version);
}
