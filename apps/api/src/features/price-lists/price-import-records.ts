import {
  PRICE_IMPORT_STATUSES,
  priceImportRowSchema,
  priceImportSchema,
  priceMappingSchema,
} from '@scantling/contracts';
import { PRICE_CHANGES, type PriceMapping, type PriceRow } from '@scantling/costing';
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
    status: z.enum(PRICE_IMPORT_STATUSES).parse(row.status),
    validFrom: terms.validFrom,
    isComplete: terms.isComplete,
    rowsRead: row.rowsRead,
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

/** What a staged row holds: the price read with the amount until now, or the cells as they stand in the file. */
export type StagedData = { row: PriceRow; before: string | null } | { cells: readonly string[] };

const lineSchema = priceImportRowSchema.shape.line.unwrap();
const stagedSchema = z.union([
  z.object({
    row: z.object({
      code: z.string(),
      description: z.string(),
      material: z.string().optional(),
      unit: lineSchema.shape.unit,
      amount: z.string(),
      from: z.string(),
      breakKind: lineSchema.shape.breakKind,
      packSize: z.string().optional(),
      minimumQuantity: z.string().optional(),
      leadDays: z.number().optional(),
    }),
    before: z.string().nullable(),
  }),
  z.object({ cells: z.array(z.string()) }),
]);

export function toPriceImportRow(staged: FileImportRow): z.output<typeof priceImportRowSchema> {
  const data = stagedSchema.parse(staged.data);
  const base = {
    rowNumber: staged.rowNumber,
    change: z.enum(PRICE_CHANGES).parse(staged.change),
    problems: priceImportRowSchema.shape.problems.parse(staged.problems ?? []),
  };
  if ('cells' in data) return { ...base, line: null, before: null, cells: data.cells };
  const { from, material, packSize, minimumQuantity, leadDays, ...row } = data.row;
  const line = {
    ...row,
    material: material ?? null,
    breakFrom: from,
    packSize: packSize ?? null,
    minimumQuantity: minimumQuantity ?? null,
    leadDays: leadDays ?? null,
  };
  return { ...base, line, before: data.before, cells: null };
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
