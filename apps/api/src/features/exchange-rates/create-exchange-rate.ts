import { createExchangeRate } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { toExchangeRate } from './exchange-rate-records.ts';

export const answerCreateExchangeRate = handle(createExchangeRate, async ({ body, services }) => {
  if (body.from === body.to)
    throw fieldProblem('to', 'is the same currency as from', 'Name the currency it is exchanged into.');
  const data = { ...body, onDate: new Date(body.onDate), createdAt: services.clock() };
  return toExchangeRate(await services.database.exchangeRate.create({ data }));
});
