import { discardPriceImport } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { findPriceImport, toPriceImport } from './price-import-records.ts';

export const answerDiscardPriceImport = handle(discardPriceImport, async ({ params: { id }, services }) =>
  services.database.$transaction(async (transaction) => {
    const before = await findPriceImport(transaction, id);
    if (before.status === 'discarded') return toPriceImport(before);
    const { count } = await transaction.fileImport.updateMany({
      where: { id, status: { in: ['reading', 'waiting', 'previewed', 'failed'] } },
      data: { status: 'discarded', phase: null, content: null },
    });
    if (count === 0)
      throw new RequestProblem('import-not-ready', { detail: `The import is ${before.status}.` });
    await transaction.fileImportRow.deleteMany({ where: { importId: id } });
    return toPriceImport(await findPriceImport(transaction, id));
  }),
);
