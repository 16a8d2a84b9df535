import { getPriceImport } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { isAbandoned, readOn } from './begin-price-import.ts';
import { findPriceImport, toPriceImport } from './price-import-records.ts';

export const answerGetPriceImport = handle(getPriceImport, async ({ params, services, request }) => {
  const row = await findPriceImport(services.database, params.id);
  // The process that read it was killed: whoever asks for it sets it going again.
  if (isAbandoned(row, services.clock()))
    void readOn(services.database, row.id, (error) => request.log.error(error, 'a price list was not read'));
  return toPriceImport(row);
});
