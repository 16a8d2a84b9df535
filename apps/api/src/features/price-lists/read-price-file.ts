import {
  findHeaderRow,
  guessPriceMapping,
  missingColumns,
  type PriceMapping,
  placeColumns,
} from '@scantling/costing';
import { readTable, type TableRow, TableUnreadableError } from '@scantling/renderers';
import type { Database } from '../../database/connect.ts';
import {
  type ImportSettings,
  importSettingsSchema,
  PRICE_IMPORT_KIND,
  readRememberedMapping,
} from './price-import-records.ts';
import { RowStager } from './stage-rows.ts';

const BATCH_ROWS = 1000;
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

/** Writes how far it is; what is no longer being read (discarded meanwhile) stops here. */
async function note(
  database: Database,
  id: string,
  data: { rowsRead?: number; status?: string; settings?: ImportSettings; summary?: Record<string, number> },
): Promise<void> {
  const { count } = await database.fileImport.updateMany({ where: { id, status: 'reading' }, data });
  if (count === 0) throw new ImportStopped();
}

async function countChanges(database: Database, importId: string): Promise<Record<string, number>> {
  const groups = await database.fileImportRow.groupBy({ by: ['change'], where: { importId }, _count: true });
  return Object.fromEntries(groups.map(({ change, _count }) => [change, _count]));
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
  let stager: RowStager | undefined;
  let rowsRead = 0;
  for await (const batch of batchesOf(table.rows)) {
    let rows = batch;
    if (stager === undefined) {
      const start = batch.slice(0, HEADER_SEARCH_ROWS).map(({ cells }) => cells);
      const at = findHeaderRow(start, settings.mapping ?? remembered);
      const headers = start[at] ?? [];
      const mapping = chooseMapping(settings, remembered, headers);
      settings.headers = [...headers];
      settings.mapping = mapping;
      settings.missingColumns = missingColumns(mapping, headers);
      const { format, decimalMark, separator = null, encoding = null } = table;
      settings.found = { format, decimalMark, separator, encoding };
      if (settings.missingColumns.length > 0) return note(database, id, { status: 'waiting', settings });
      rows = batch.slice(at + 1);
      const places = placeColumns(mapping, headers);
      const context = {
        places,
        decimalMark,
        unit: mapping.unit,
        isMaterial: (code: string) => codes.has(code),
      };
      stager = new RowStager(database, id, terms, context);
      await note(database, id, { settings });
    }
    await stager.stage(rows);
    rowsRead += rows.length;
    await note(database, id, { rowsRead });
  }
  await stager?.stageGone();
  await note(database, id, { status: 'previewed', rowsRead, summary: await countChanges(database, id) });
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
      data: { status: 'failed', problem, content: null },
    });
    if (!(error instanceof TableUnreadableError)) throw error;
  }
}
