import type { FileImport } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import type { Services } from '../../services.ts';
import { isKnownFile } from './begin-price-import.ts';
import { findPriceImport, importSettingsSchema, WITHOUT_CONTENT } from './price-import-records.ts';
import { rowsStaged, writePriceList } from './write-price-list.ts';

const LONGEST_MS = 5 * 60_000;

/**
 * Makes a price list of a previewed import: whole or not at all, in one transaction. One that was applied before
 * changes nothing.
 * @throws RequestProblem not-found, import-not-ready, import-unreadable
 */
export function takeOverPrices(
  { database, clock }: Pick<Services, 'database' | 'clock'>,
  id: string,
  wanted: { leaveOutUnreadable: boolean; createdBy: string },
): Promise<Omit<FileImport, 'content'>> {
  return database.$transaction(
    async (transaction) => {
      await transaction.$queryRaw`select id from "FileImport" where id = ${id} for update`;
      const row = await findPriceImport(transaction, id);
      if (row.status === 'applied' || row.status === 'unchanged') return row;
      if (row.status !== 'previewed')
        throw new RequestProblem('import-not-ready', {
          detail: `The import is ${row.status}, not previewed.`,
        });
      const settings = importSettingsSchema.parse(row.settings);
      const unreadable = await transaction.fileImportRow.count({
        where: { importId: id, change: 'unreadable' },
      });
      if (unreadable > 0 && !wanted.leaveOutUnreadable)
        throw new RequestProblem('import-unreadable', { detail: `${unreadable} rows cannot be read.` });
      const readable = await transaction.fileImportRow.count({
        where: { importId: id, change: { notIn: ['unreadable', 'gone'] } },
      });
      if (readable === 0)
        throw new RequestProblem('import-unreadable', { detail: 'No row of the file can be read.' });
      const isKnown = await isKnownFile(transaction, settings.terms, row.sha256);
      if (!isKnown) {
        const origin = {
          createdBy: wanted.createdBy,
          createdAt: clock(),
          sourceName: row.fileName,
          sourceSha256: row.sha256,
        };
        settings.priceListId = await writePriceList(transaction, settings.terms, origin, rowsStaged(id));
      }
      await transaction.fileImportRow.deleteMany({ where: { importId: id } });
      return transaction.fileImport.update({
        where: { id },
        data: { status: isKnown ? 'unchanged' : 'applied', settings, content: null },
        omit: WITHOUT_CONTENT,
      });
    },
    { timeout: LONGEST_MS, maxWait: 10_000 },
  );
}
