import { defineContract } from '../contract.ts';
import { currencySchema } from '../figures.ts';
import { pageOf, pageQuery } from '../page.ts';
import { exampleExchangeRate, exchangeRateSchema } from './exchange-rate.ts';

export const listExchangeRates = defineContract({
  name: 'list-exchange-rates',
  method: 'GET',
  path: '/api/exchange-rates',
  summary: 'List exchange rates',
  description: 'Newest day first. Of two rates of one pair and day the one entered later holds.',
  tag: 'exchange-rates',
  roles: 'anyone',
  query: pageQuery.extend({ from: currencySchema.optional(), to: currencySchema.optional() }),
  answer: pageOf(exchangeRateSchema),
  example: { answer: { items: [exampleExchangeRate], next: null } },
});
