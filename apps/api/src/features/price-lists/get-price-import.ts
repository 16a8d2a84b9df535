import { getPriceImport } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readAbandoned } from './begin-price-import.ts';
import { findPriceImport, toPriceImport } from './price-import-records.ts';

export const answerGetPriceImport = handle(getPriceImport, async ({ params, services, request }) => {
  const row = await findPriceImport(services.database, params.id);
  readAbandoned(services, row, (error) => request.log.error(error, 'a price list was not read'));
  return toPriceImport(row);
});
