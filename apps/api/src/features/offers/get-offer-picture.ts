import { getOfferPicture } from '@scantling/contracts';
import { FileAnswer, handle } from '../../handle.ts';
import { readPicture } from '../../pictures/picture-records.ts';
import { notFound } from '../../problems/request-problem.ts';
import { pictureNames } from '../quotes/document-pictures.ts';
import { findRevisionRow } from '../quotes/quote-records.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findOfferId, toOffer } from './offer-records.ts';

export const answerGetOfferPicture = handle(getOfferPicture, async ({ params, request, services }) => {
  const { database, clock } = services;
  const row = await findRevisionRow(database, await findOfferId(services, params.token, request.ip));
  const { document } = await toOffer(database, row, dayOf(clock()));
  if (document === null || !pictureNames(document).includes(params.sha256)) throw notFound('picture');
  const { mediaType, bytes } = await readPicture(database, params.sha256, 'full');
  const name = `${params.sha256.slice(0, 16)}.${mediaType === 'image/png' ? 'png' : 'jpg'}`;
  return new FileAnswer(name, mediaType, bytes, { tag: params.sha256, isInline: true });
});
