import type { FileImport } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import type { Services } from '../../services.ts';
import { isKnownFile } from './begin-price-import.ts';
import {
  findPriceImport,
  importSettingsSchema,
  LONGEST_TAKING_OVER_MS,
  WITHOUT_CONTENT,
} from './price-import-records.ts';
import { rowsStaged } from './priced-rows.ts';
import { writePriceList } from './write-price-list.ts';

type Wanted = { leaveOutUnreadable: boolean; createdBy: string };

/**
 * Makes a price list of a previewed import: whole or not at all, in one transaction. One that was applied before
 * changes nothing.
 * @throws RequestProblem not-found, import-not-ready, import-unreadable
 */
export async function takeOverPrices(
  services: Pick<Services, 'database' | 'clock'>,
  id: string,
  wanted: Wanted,
): Promise<Omit<FileImport, 'content'>> {
  const { database } = services;
  // Said beforehand, in a step of its own: what the one below does is seen by nobody until it is done.
  const underway = await database.fileImport.updateMany({
    where: { id, status: 'previewed' },
    data: { phase: 'taking-over' },
  });
  try {
    return await takeOver(services, id, wanted);
  } catch (error) {
    if (underway.count > 0)
      await database.fileImport.updateMany({ where: { id, phase: 'taking-over' }, data: { phase: null } });
    throw error;
  }
}

function takeOver(
  { database, clock }: Pick<Services, 'database' | 'clock'>,
  id: string,
  wanted: Wanted,
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
        await transaction.priceImpact.create({ data: { listId: settings.priceListId } });
      }
      await transaction.fileImportRow.deleteMany({ where: { importId: id } });
      return transaction.fileImport.update({
        where: { id },
        data: { status: isKnown ? 'unchanged' : 'applied', phase: null, settings, content: null },
        omit: WITHOUT_CONTENT,
      });
    },
    { timeout: LONGEST_TAKING_OVER_MS, maxWait: 10_000 },
  );
}
