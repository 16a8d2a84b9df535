import { defineContract } from '../contract.ts';
import { exampleOffer, exampleOfferToken, offerParams, offerSchema } from './offer.ts';

export const readOffer = defineContract({
  name: 'read-offer',
  method: 'GET',
  path: '/api/offers/:token',
  summary: 'Read an offer by the client’s link',
  description: 'Without signing in. What the client was sent, word for word, and whether it can be accepted.',
  tag: 'offers',
  roles: 'visitor',
  params: offerParams,
  answer: offerSchema,
  example: { params: { token: exampleOfferToken }, answer: exampleOffer },
});
