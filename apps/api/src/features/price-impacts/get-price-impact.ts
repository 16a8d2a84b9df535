import { getPriceImpact } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { workOnAbandoned } from './begin-impact.ts';
import { findImpact } from './impact-records.ts';

export const answerGetPriceImpact = handle(getPriceImpact, async ({ params, services, request }) => {
  const row = await services.database.priceImpact.findUnique({ where: { listId: params.id } });
  if (row !== null)
    workOnAbandoned(services, row, (error) => request.log.error(error, 'a price impact was not worked out'));
  return findImpact(services.database, params.id);
});
