import {
  currencySchema,
  PRICE_IMPORT_PHASES,
  PRICE_IMPORT_STATUSES,
  priceImportRowSchema,
  priceImportSchema,
  priceMappingSchema,
} from '@scantling/contracts';
import { PRICE_CHANGES, type PriceMapping } from '@scantling/costing';
import { z } from 'zod';
import type { FileImport, FileImportRow } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';
import type { DatabaseAccess } from './database-access.ts';
import { listTermsSchema } from './list-terms.ts';

export const PRICE_IMPORT_KIND = 'price-list';

/** What an import keeps beside its rows. */
export const importSettingsSchema = z.strictObject({
  terms: listTermsSchema,
  /** As the person set it, or as it was remembered or guessed when the file was read. */
  mapping: priceMappingSchema.nullable(),
  isMappedByHand: z.boolean(),
  headers: priceImportSchema.shape.headers,
  missingColumns: priceImportSchema.shape.missingColumns,
  found: priceImportSchema.shape.found,
  priceListId: z.string().nullable(),
});
export type ImportSettings = z.output<typeof importSettingsSchema>;

const countsSchema = z.partialRecord(z.enum(PRICE_CHANGES), z.number().int());

/** After it a taking over is given up by the database. */
export const LONGEST_TAKING_OVER_MS = 5 * 60_000;

/** What is being done; a taking over whose process ended left its word behind. */
function phaseOf({ phase, updatedAt }: Omit<FileImport, 'content'>) {
  const isLeftBehind = phase === 'taking-over' && Date.now() - updatedAt.getTime() > LONGEST_TAKING_OVER_MS;
  return isLeftBehind ? null : z.enum(PRICE_IMPORT_PHASES).nullable().parse(phase);
}

/** All but the file's content, which can be large. */
export const WITHOUT_CONTENT = { content: true } as const;

export function toPriceImport(row: Omit<FileImport, 'content'>): z.output<typeof priceImportSchema> {
  const { terms, mapping, headers, missingColumns, found, priceListId } = importSettingsSchema.parse(
    row.settings,
  );
  const counts = countsSchema.parse(row.summary ?? {});
  const count = (change: (typeof PRICE_CHANGES)[number]) => counts[change] ?? 0;
  return {
    id: row.id,
    supplierId: terms.supplierId,
    fileName: row.fileName,
    listName: terms.name,
    status: z.enum(PRICE_IMPORT_STATUSES).parse(row.status),
    phase: phaseOf(row),
    validFrom: terms.validFrom,
    isComplete: terms.isComplete,
    currency: terms.currency,
    rowsRead: row.rowsRead,
    bytesRead: row.bytesRead,
    bytesTotal: row.bytesTotal,
    headers,
    mapping,
    missingColumns,
    found,
    counts: {
      new: count('new'),
      dearer: count('dearer'),
      cheaper: count('cheaper'),
      changed: count('changed'),
      unchanged: count('unchanged'),
      gone: count('gone'),
      unreadable: count('unreadable'),
    },
    problem: row.problem,
    priceListId,
    createdAt: row.createdAt.toISOString(),
  };
}

/** @throws RequestProblem not-found */
export async function findPriceImport(
  database: DatabaseAccess,
  id: string,
): Promise<Omit<FileImport, 'content'>> {
  const row = await database.fileImport.findUnique({
    where: { id, kind: PRICE_IMPORT_KIND },
    omit: WITHOUT_CONTENT,
  });
  if (row === null) throw notFound('import');
  return row;
}

const lineSchema = priceImportRowSchema.shape.line.unwrap();

/** @param currency of the list on its way in */
export function toPriceImportRow(
  staged: FileImportRow,
  currency: string,
): z.output<typeof priceImportRowSchema> {
  const change = z.enum(PRICE_CHANGES).parse(staged.change);
  const base = {
    rowNumber: staged.rowNumber,
    change,
    // What is gone is a line of the old list.
    currency: currencySchema.parse(change === 'gone' ? staged.beforeCurrency : currency),
    before: staged.before?.toFixed() ?? null,
    beforeCurrency: currencySchema.nullable().parse(staged.beforeCurrency),
    problems: priceImportRowSchema.shape.problems.parse(staged.problems ?? []),
  };
  if (change === 'unreadable') return { ...base, line: null, cells: staged.cells };
  const line = lineSchema.parse({
    code: staged.code,
    description: staged.description,
    material: staged.material,
    unit: staged.unit,
    amount: staged.amount?.toFixed(),
    breakFrom: staged.breakFrom?.toFixed(),
    breakKind: staged.breakKind,
    packSize: staged.packSize?.toFixed() ?? null,
    minimumQuantity: staged.minimumQuantity?.toFixed() ?? null,
    leadDays: staged.leadDays,
  });
  return { ...base, line, cells: null };
}

/** How this supplier's columns were matched last time. */
export async function readRememberedMapping(
  database: DatabaseAccess,
  supplierId: string,
): Promise<PriceMapping | undefined> {
  const where = { kind_supplierId: { kind: PRICE_IMPORT_KIND, supplierId } };
  const kept = await database.importMapping.findUnique({ where });
  return kept === null ? undefined : priceMappingSchema.safeParse(kept.mapping).data;
}

export async function rememberMapping(
  database: DatabaseAccess,
  supplierId: string,
  mapping: z.output<typeof priceMappingSchema>,
): Promise<void> {
  const identity = { kind: PRICE_IMPORT_KIND, supplierId };
  await database.importMapping.upsert({
    where: { kind_supplierId: identity },
    create: { ...identity, mapping },
    update: { mapping },
  });
}
