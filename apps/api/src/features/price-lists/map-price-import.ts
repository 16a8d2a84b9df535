import { mapPriceImport } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { readOn } from './begin-price-import.ts';
import {
  findPriceImport,
  importSettingsSchema,
  rememberMapping,
  toPriceImport,
} from './price-import-records.ts';

export const answerMapPriceImport = handle(
  mapPriceImport,
  async ({ params: { id }, body, services, request }) => {
    const { database } = services;
    await database.$transaction(async (transaction) => {
      const settings = importSettingsSchema.parse((await findPriceImport(transaction, id)).settings);
      const { count } = await transaction.fileImport.updateMany({
        where: { id, status: { in: ['waiting', 'previewed'] } },
        data: {
          status: 'reading',
          phase: 'reading',
          rowsRead: 0,
          bytesRead: 0,
          settings: { ...settings, mapping: body, isMappedByHand: true },
        },
      });
      if (count === 0) throw new RequestProblem('import-not-ready');
      // Only what a person said is remembered: a guess would hide columns that a later file has more.
      await rememberMapping(transaction, settings.terms.supplierId, body);
    });
    void readOn(database, id, (error) => request.log.error(error, 'a price list was not read'));
    return toPriceImport(await findPriceImport(database, id));
  },
);
