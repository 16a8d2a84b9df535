import { PRICE_CHANGES, PRICE_COLUMNS } from '@scantling/costing';
import { z } from 'zod';
import { currencySchema } from '../figures.ts';
import { calendarDate, moment, recordId } from '../record.ts';
import { priceLineFields, priceListTerms, priceUnitSchema } from './price-list.ts';

const yesOrNo = z.enum(['true', 'false']).transform((text) => text === 'true');

/** What a list from a file says of itself, as the query of an upload; what is left out is the supplier's. */
export const priceImportQuery = priceListTerms
  .omit({ isComplete: true, taxIncluded: true, name: true })
  .extend({
    name: priceListTerms.shape.name.optional(),
    isComplete: yesOrNo.optional(),
    taxIncluded: yesOrNo.optional(),
  });

export const priceMappingSchema = z
  .strictObject({
    columns: z
      .partialRecord(z.enum(PRICE_COLUMNS), z.string().max(500))
      .meta({ description: "Our column: the file's header" }),
    unit: priceUnitSchema.exactOptional(),
  })
  .meta({ id: 'PriceMapping' });

/**
 * waiting: the mapping lacks a needed column. previewed: ready to be applied. unchanged: the same file was applied
 * before, nothing to do. failed: see `problem`.
 */
export const PRICE_IMPORT_STATUSES = [
  'reading',
  'waiting',
  'previewed',
  'applied',
  'unchanged',
  'discarded',
  'failed',
] as const;

/** What is being done with an import at this moment. */
export const PRICE_IMPORT_PHASES = ['reading', 'comparing', 'taking-over'] as const;

const count = z.number().int();
export const priceImportSchema = z
  .strictObject({
    id: recordId,
    supplierId: recordId,
    fileName: z.string(),
    listName: z.string(),
    status: z.enum(PRICE_IMPORT_STATUSES),
    phase: z
      .enum(PRICE_IMPORT_PHASES)
      .nullable()
      .meta({ description: 'What is being done with it at this moment; null while nothing is' }),
    validFrom: calendarDate,
    isComplete: z.boolean(),
    currency: currencySchema,
    rowsRead: count,
    bytesRead: count.meta({ description: "How many of the file's bytes have been read" }),
    bytesTotal: count,
    headers: z.array(z.string()).meta({ description: "The file's headers, to map" }),
    mapping: priceMappingSchema.nullable(),
    missingColumns: z.array(z.enum(PRICE_COLUMNS)),
    found: z
      .strictObject({
        format: z.enum(['csv', 'xlsx']),
        separator: z.string().nullable(),
        encoding: z.string().nullable(),
        decimalMark: z.enum(['point', 'comma']),
      })
      .nullable()
      .meta({ description: 'How the file is written' }),
    counts: z.record(z.enum(PRICE_CHANGES), count),
    problem: z.string().nullable(),
    priceListId: recordId.nullable(),
    createdAt: moment,
  })
  .meta({ id: 'PriceImport' });

export const priceImportRowSchema = z
  .strictObject({
    rowNumber: count.meta({
      description: 'Line of the text or row of the sheet; of the old list where the price is gone',
    }),
    change: z.enum(PRICE_CHANGES),
    line: priceLineFields.nullable().meta({ description: 'Null where the row cannot be read' }),
    currency: currencySchema.meta({
      description: "Of the line's amount; the old list's where the price is gone",
    }),
    before: z.string().nullable().meta({ description: 'The amount until now' }),
    beforeCurrency: currencySchema.nullable(),
    cells: z
      .array(z.string())
      .nullable()
      .meta({ description: 'The row as it stands in the file, where it cannot be read' }),
    problems: z.array(
      z.strictObject({ column: z.enum(PRICE_COLUMNS), message: z.string(), mend: z.string() }),
    ),
  })
  .meta({ id: 'PriceImportRow' });

export const exampleMapping = { columns: { code: 'code', unit: 'unit', price: 'price' } } as const;
export const examplePriceImport: z.input<typeof priceImportSchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000050',
  supplierId: '0193f6a0-7c11-7000-8000-000000000010',
  fileName: 'spring.csv',
  listName: 'spring.csv',
  status: 'previewed',
  phase: null,
  validFrom: '2026-03-01',
  isComplete: false,
  currency: 'EUR',
  rowsRead: 2,
  bytesRead: 88,
  bytesTotal: 88,
  headers: ['code', 'unit', 'price'],
  mapping: exampleMapping,
  missingColumns: [],
  found: { format: 'csv', separator: ',', encoding: 'utf-8', decimalMark: 'point' },
  counts: { new: 1, dearer: 0, cheaper: 0, changed: 0, unchanged: 0, gone: 0, unreadable: 1 },
  problem: null,
  priceListId: null,
  createdAt: '2026-03-01T09:30:00.000Z',
};
