import { type PriceRowContext, priceIdentity, readPriceRow } from '@scantling/costing';
import type { TableRow } from '@scantling/renderers';
import type { Database } from '../../database/connect.ts';
import type { ListTermsRecord } from './list-terms.ts';
import type { NumberedRow } from './priced-rows.ts';
import { stagePrices, stageUnreadable, type UnreadableRow } from './stage-prices.ts';

/** Rows read, by what they can be staged as. */
export interface ReadBatch {
  readonly prices: readonly NumberedRow[];
  readonly unreadable: readonly UnreadableRow[];
}

/** Reads the rows of one file; of two that are the same price the second is refused. */
export class RowReader {
  private readonly places = new Map<string, number>();

  constructor(private readonly context: PriceRowContext) {}

  read(rows: readonly TableRow[]): ReadBatch {
    const prices: NumberedRow[] = [];
    const unreadable: UnreadableRow[] = [];
    for (const { number, cells } of rows) {
      const read = readPriceRow(cells, this.context);
      if ('problems' in read) {
        unreadable.push({ number, cells, problems: read.problems });
        continue;
      }
      const identity = priceIdentity(read.row);
      const first = this.places.get(identity);
      if (first === undefined) {
        this.places.set(identity, number);
        prices.push({ number, row: read.row });
        continue;
      }
      const message = `row ${first} has the same code, unit and break`;
      const problems = [{ column: 'code' as const, message, mend: 'Keep one of the two rows.' }];
      unreadable.push({ number, cells, problems });
    }
    return { prices, unreadable };
  }
}

/**
 * Writes a batch into the staging rows with how far the reading is, in one transaction.
 * @returns false where the import is no longer being read
 */
export function stageBatch(
  database: Database,
  importId: string,
  terms: ListTermsRecord,
  batch: ReadBatch,
  progress: { rowsRead: number; bytesRead: number },
): Promise<boolean> {
  return database.$transaction(
    async (transaction) => {
      // Staged rows can be read again from the file: they need not be on the disk before the next batch.
      await transaction.$executeRaw`set local synchronous_commit = off`;
      const where = { id: importId, status: 'reading' };
      const { count } = await transaction.fileImport.updateMany({ where, data: progress });
      if (count === 0) return false;
      if (batch.prices.length > 0) await stagePrices(transaction, importId, terms, batch.prices);
      if (batch.unreadable.length > 0) await stageUnreadable(transaction, importId, batch.unreadable);
      return true;
    },
    { timeout: 60_000, maxWait: 60_000 },
  );
}
