import { defineContract } from '../contract.ts';
import { exampleOfferToken, offerParams } from './offer.ts';

export const getOfferPaper = defineContract({
  name: 'get-offer-paper',
  method: 'GET',
  path: '/api/offers/:token/paper',
  summary: 'Read the paper of an offer by the client’s link',
  description: 'The PDF just as it was sent, while the offer is open, accepted, declined or expired.',
  tag: 'offers',
  roles: 'visitor',
  params: offerParams,
  givesFile: ['application/pdf'],
  example: { params: { token: exampleOfferToken } },
});
