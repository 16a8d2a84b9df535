import { defineContract } from '../contract.ts';
import {
  earlyPriceInputSchema,
  exampleEarlyPriceInput,
  workedEarlyPriceSchema,
  workOutEarlyPrice,
} from '../enquiries/worked-early-price.ts';
import { calculationQuery } from './calculation.ts';

export const earlyPrice = defineContract({
  name: 'early-price',
  method: 'POST',
  path: '/api/calculations/early-price',
  summary: 'A price range before a bill of materials exists',
  description:
    'Past pieces scaled class by class to the size, count or hours asked for: factor = (asked / past) ^ exponent. With several pieces the range is their least and greatest, with one it is a stated band. A range, not an offer.',
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: earlyPriceInputSchema,
  answer: workedEarlyPriceSchema,
  example: {
    body: exampleEarlyPriceInput,
    answer: workOutEarlyPrice(exampleEarlyPriceInput, { withDerivations: true }),
  },
});
