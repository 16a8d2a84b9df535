import {
  findHeaderRow,
  guessPriceMapping,
  missingColumns,
  type PriceMapping,
  placeColumns,
} from '@scantling/costing';
import { readTable, type Table, type TableRow, TableUnreadableError } from '@scantling/renderers';
import type { Database } from '../../database/connect.ts';
import {
  type ImportSettings,
  importSettingsSchema,
  PRICE_IMPORT_KIND,
  readRememberedMapping,
} from './price-import-records.ts';
import { stageGone } from './stage-prices.ts';
import { RowReader, stageBatch } from './stage-rows.ts';

const BATCH_ROWS = 2500;
const HEADER_SEARCH_ROWS = 20;

/** The import was discarded while its file was read. */
class ImportStopped extends Error {
  override readonly name = 'ImportStopped';
}

async function* batchesOf(rows: AsyncIterable<TableRow>): AsyncGenerator<TableRow[]> {
  let batch: TableRow[] = [];
  for await (const row of rows) {
    batch.push(row);
    if (batch.length < BATCH_ROWS) continue;
    yield batch;
    batch = [];
  }
  if (batch.length > 0) yield batch;
}

function chooseMapping(
  settings: ImportSettings,
  remembered: PriceMapping | undefined,
  headers: readonly string[],
) {
  if (settings.isMappedByHand && settings.mapping !== null) return settings.mapping;
  if (remembered !== undefined && missingColumns(remembered, headers).length === 0) return remembered;
  return guessPriceMapping(headers);
}

type Note = { status?: string; phase?: string | null; settings?: ImportSettings; bytesRead?: number } & {
  summary?: Record<string, number>;
};

/** Writes how far it is; what is no longer being read (discarded meanwhile) stops here. */
async function note(database: Database, id: string, data: Note): Promise<void> {
  const { count } = await database.fileImport.updateMany({ where: { id, status: 'reading' }, data });
  if (count === 0) throw new ImportStopped();
}

async function countChanges(database: Database, importId: string): Promise<Record<string, number>> {
  const groups = await database.fileImportRow.groupBy({ by: ['change'], where: { importId }, _count: true });
  return Object.fromEntries(groups.map(({ change, _count }) => [change, _count]));
}

/** Matches the columns by the first rows; says where the prices begin, and with which mapping they are read. */
function matchColumns(
  settings: ImportSettings,
  table: Table,
  remembered: PriceMapping | undefined,
  first: readonly TableRow[],
): { mapping: PriceMapping; begin: number } {
  const start = first.slice(0, HEADER_SEARCH_ROWS).map(({ cells }) => cells);
  const at = findHeaderRow(start, settings.mapping ?? remembered);
  const headers = start[at] ?? [];
  const mapping = chooseMapping(settings, remembered, headers);
  const { format, decimalMark, separator = null, encoding = null } = table;
  settings.headers = [...headers];
  settings.mapping = mapping;
  settings.missingColumns = missingColumns(mapping, headers);
  settings.found = { format, decimalMark, separator, encoding };
  return { mapping, begin: at + 1 };
}

async function readRows(database: Database, id: string): Promise<void> {
  const found = await database.fileImport.findUnique({ where: { id, kind: PRICE_IMPORT_KIND } });
  if (found === null || found.content === null) throw new ImportStopped();
  const settings = importSettingsSchema.parse(found.settings);
  const { terms } = settings;
  await database.fileImportRow.deleteMany({ where: { importId: id } });
  const table = await readTable(found.content);
  const remembered = await readRememberedMapping(database, terms.supplierId);
  const materials = await database.material.findMany({ select: { code: true } });
  const codes = new Set(materials.map(({ code }) => code));
  let reader: RowReader | undefined;
  let rowsRead = 0;
  // One batch is written while the next is read.
  let writing = Promise.resolve(true);
  try {
    for await (const batch of batchesOf(table.rows)) {
      let rows = batch;
      if (reader === undefined) {
        const { mapping, begin } = matchColumns(settings, table, remembered, batch);
        if (settings.missingColumns.length > 0)
          return note(database, id, { status: 'waiting', phase: null, settings });
        rows = batch.slice(begin);
        const places = placeColumns(mapping, settings.headers);
        const isMaterial = (code: string) => codes.has(code);
        reader = new RowReader({ places, decimalMark: table.decimalMark, unit: mapping.unit, isMaterial });
        await note(database, id, { settings, phase: 'reading' });
      }
      const read = reader.read(rows);
      rowsRead += rows.length;
      const progress = { rowsRead, bytesRead: table.bytesRead() };
      if (!(await writing)) throw new ImportStopped();
      writing = stageBatch(database, id, terms, read, progress);
      // A failure is met at the next turn; until then it must not count as one that nobody handles.
      writing.catch(() => undefined);
    }
  } finally {
    // What is under way ends first, so that nothing is written after this reading was given up.
    await writing.catch(() => undefined);
  }
  if (!(await writing)) throw new ImportStopped();
  await note(database, id, { phase: 'comparing', bytesRead: found.bytesTotal });
  // Thousands of new rows are unknown to the planner until they are counted.
  await database.$executeRaw`analyze "FileImportRow" ("importId", change, code)`;
  if (terms.isComplete) await stageGone(database, id, terms);
  await note(database, id, {
    status: 'previewed',
    phase: null,
    summary: await countChanges(database, id),
  });
}

/**
 * Reads the file of an import into staged rows; run again it begins anew. Ends with the import waiting for a mapping,
 * previewed, or failed with the reason in `problem`; only a database that is away leaves it "reading".
 */
export async function readPriceFile(database: Database, id: string): Promise<void> {
  try {
    await readRows(database, id);
  } catch (error) {
    await database.fileImportRow.deleteMany({ where: { importId: id } });
    if (error instanceof ImportStopped) return;
    const problem =
      error instanceof TableUnreadableError ? error.message : 'The file could not be read. Send it again.';
    await database.fileImport.updateMany({
      where: { id, status: 'reading' },
      data: { status: 'failed', phase: null, problem, content: null },
    });
    if (!(error instanceof TableUnreadableError)) throw error;
  }
}
