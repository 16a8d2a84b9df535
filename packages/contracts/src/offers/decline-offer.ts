import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { exampleOffer, exampleOfferToken, offerParams, offerSchema } from './offer.ts';

export const declineOffer = defineContract({
  name: 'decline-offer',
  method: 'POST',
  path: '/api/offers/:token/decline',
  summary: 'Decline an offer by the client’s link',
  description: 'With a reason, if the client wants to give one.',
  tag: 'offers',
  roles: 'visitor',
  params: offerParams,
  body: z.strictObject({ reason: z.string().trim().max(2000).default('') }),
  answer: offerSchema,
  example: {
    params: { token: exampleOfferToken },
    body: { reason: 'We are moving later than planned.' },
    answer: { ...exampleOffer, state: 'declined' },
  },
});
