import type { Services } from '../../services.ts';
import { type GivenFile, keepPriceFile } from './begin-price-import.ts';
import { findPriceImport, toPriceImport } from './price-import-records.ts';
import { readPriceFile } from './read-price-file.ts';
import { takeOverPrices } from './take-over-prices.ts';

/**
 * Takes a supplier's file over in one go, by the steps a person takes one after the other: read, preview, apply.
 * @returns the import, "applied" or "unchanged"; anything else tells what a person has to decide
 * @throws RequestProblem import-unreadable where rows cannot be read
 */
export async function importPriceFile(services: Pick<Services, 'database' | 'clock'>, given: GivenFile) {
  const { id, status } = await keepPriceFile(services, given);
  if (status === 'reading') await readPriceFile(services.database, id);
  const read = await findPriceImport(services.database, id);
  if (read.status !== 'previewed') return toPriceImport(read);
  const { createdBy } = given;
  return toPriceImport(await takeOverPrices(services, id, { leaveOutUnreadable: false, createdBy }));
}
