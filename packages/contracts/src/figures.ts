import { type FigureTable, OPERATIONS, type OperationName, SOURCE_KINDS } from '@scantling/figures';
import { CURRENCIES, type Currency } from '@scantling/money';
import { BASE_UNITS } from '@scantling/units';
import { z } from 'zod';
import { decimalText } from './decimal-text.ts';

const baseUnit = z.enum(BASE_UNITS);
/** A unit of a figure: a base unit, or one per another ("money/bd ft"). */
export const unitSchema = z
  .union([baseUnit, z.templateLiteral([baseUnit, '/', baseUnit])])
  .meta({ id: 'Unit' });

/** An ISO 4217 currency. */
export const currencySchema = z
  .enum(CURRENCIES as [Currency, ...Currency[]])
  .meta({ id: 'Currency', examples: ['EUR'] });

const operationSchema = z.enum(Object.keys(OPERATIONS) as [OperationName, ...OperationName[]]);

export const sourceSchema = z
  .strictObject({ kind: z.enum(SOURCE_KINDS), text: z.string(), record: z.string().exactOptional() })
  .meta({ id: 'FigureSource' });

/** A number that shows its working, as it travels: value as decimal text, inputs by id. */
export const figureNodeSchema = z
  .strictObject({
    id: z.string(),
    label: z.string(),
    unit: unitSchema,
    currency: currencySchema.nullable(),
    value: z.string().meta({ description: 'A decimal number as text', examples: ['12.5'] }),
    note: z.string().exactOptional(),
    how: z
      .strictObject({
        operation: operationSchema,
        inputs: z.array(z.string()),
        settings: z.record(z.string(), z.string()).exactOptional(),
      })
      .exactOptional(),
    source: sourceSchema.exactOptional(),
    bounds: z
      .strictObject({
        least: z.string().exactOptional(),
        most: z.string().exactOptional(),
        isWhole: z.boolean().exactOptional(),
      })
      .exactOptional()
      .meta({ description: 'Which values a leaf can take, where that is known' }),
  })
  .meta({ id: 'Figure' });

/** Every figure of an answer by id; a shared input stands once. */
export const figureTableSchema: z.ZodType<FigureTable, FigureTable> = z
  .record(z.string(), figureNodeSchema)
  .meta({ id: 'FigureTable' });

/** The id of a figure in the answer's table. */
export const figureId = z.string().meta({ description: 'Id of a figure in `figures`' });

/** `working=true` asks for derivations: how every figure came about, down to its leaves. */
export const workingQuery = z.strictObject({
  working: z
    .enum(['true', 'false'])
    .default('false')
    .transform((text) => text === 'true'),
});

/** Leaves of what-if: the new value of a leaf by its id. */
export const changesSchema = z.record(z.string(), decimalText);
