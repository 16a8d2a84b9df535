import { getOfferPaper } from '@scantling/contracts';
import { readDocument } from '../../documents/store-document.ts';
import { FileAnswer, handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { findRevisionRow } from '../quotes/quote-records.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findOfferId, toOffer } from './offer-records.ts';

export const answerGetOfferPaper = handle(getOfferPaper, async ({ params, request, services }) => {
  const { database, clock } = services;
  const row = await findRevisionRow(database, await findOfferId(services, params.token, request.ip));
  const { document } = await toOffer(database, row, dayOf(clock()));
  if (document === null || row.paperId === null) throw notFound('paper');
  const { fileName, mediaType, bytes, sha256 } = await readDocument(database, row.paperId);
  return new FileAnswer(fileName, mediaType, bytes, { tag: sha256, isInline: true });
});
