import { readOffer } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findOffer, findOfferId } from './offer-records.ts';

export const answerReadOffer = handle(readOffer, async ({ params, request, services }) => {
  const id = await findOfferId(services, params.token, request.ip);
  return findOffer(services.database, id, dayOf(services.clock()));
});
