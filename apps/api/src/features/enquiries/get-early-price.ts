import { getEarlyPrice } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findEarlyPrice } from './early-price-records.ts';

export const answerGetEarlyPrice = handle(getEarlyPrice, ({ params, services }) =>
  findEarlyPrice(services.database, params.id, params.number),
);
