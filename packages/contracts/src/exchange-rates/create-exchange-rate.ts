import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import {
  exampleExchangeRate,
  exampleExchangeRateFields,
  exchangeRateFields,
  exchangeRateSchema,
} from './exchange-rate.ts';

export const createExchangeRate = defineContract({
  name: 'create-exchange-rate',
  method: 'POST',
  path: '/api/exchange-rates',
  summary: 'Enter an exchange rate',
  description: 'Rates are kept for good: a correction is another rate of the same day. Used both ways round.',
  tag: 'exchange-rates',
  roles: RECORD_KEEPERS,
  body: exchangeRateFields,
  answer: exchangeRateSchema,
  status: 201,
  idempotent: true,
  example: { body: exampleExchangeRateFields, answer: exampleExchangeRate },
});
