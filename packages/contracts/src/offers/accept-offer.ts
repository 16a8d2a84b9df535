import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { chosenSchema } from '../quotes/quote-terms.ts';
import { singleLine } from '../single-line.ts';
import { exampleOffer, exampleOfferToken, offerParams, offerSchema } from './offer.ts';

export const acceptOffer = defineContract({
  name: 'accept-offer',
  method: 'POST',
  path: '/api/offers/:token/accept',
  summary: 'Accept an offer by the client’s link',
  description:
    'With a name and what is chosen. `documentHash` says which text was read; kept are name, time and the hash of document, choices and totals. Of two acceptances at once one holds.',
  tag: 'offers',
  roles: 'visitor',
  params: offerParams,
  body: z.strictObject({
    name: singleLine(200).min(1),
    chosen: chosenSchema.default([]),
    documentHash: z.string().max(64),
    remark: z.string().trim().max(2000).default(''),
  }),
  answer: offerSchema,
  example: {
    params: { token: exampleOfferToken },
    body: { name: 'Greta Lindqvist', chosen: ['cushion'], documentHash: 'a'.repeat(64) },
    answer: { ...exampleOffer, state: 'accepted' },
  },
});
