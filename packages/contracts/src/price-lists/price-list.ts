import { BREAK_KINDS } from '@scantling/costing';
import { PRICING_UNIT_IDS } from '@scantling/units';
import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import { moneyText, shareText } from '../decimal-text.ts';
import { currencySchema } from '../figures.ts';
import { calendarDate, givenName, moment, recordId } from '../record.ts';
import { givenCode, wholeDays } from '../suppliers/supplier.ts';

export const priceUnitSchema = z.enum(PRICING_UNIT_IDS);

const bought = { digits: 12, places: 6, example: '10' };

/** A line as it is entered; identity is the supplier's code, the unit and the break. */
export const priceLineFields = z.strictObject({
  code: givenCode,
  description: z.string().trim().max(500).default(''),
  /** Code of the material it is here. */
  material: givenCode.nullable().default(null),
  unit: priceUnitSchema,
  amount: moneyText,
  breakFrom: boundedDecimal(bought).default('0'),
  breakKind: z.enum(BREAK_KINDS).default('all-units'),
  packSize: boundedDecimal({ ...bought, isPositive: true })
    .nullable()
    .default(null),
  minimumQuantity: boundedDecimal(bought).nullable().default(null),
  leadDays: wholeDays.nullable().default(null),
});

export const priceLineSchema = z
  .strictObject({
    id: recordId,
    itemId: recordId,
    ...priceLineFields.shape,
    rowNumber: z.number().int(),
  })
  .meta({ id: 'PriceLine' });

/** What a whole list says; null takes what the supplier's record says. */
export const priceListTerms = z.strictObject({
  supplierId: recordId,
  name: givenName,
  validFrom: calendarDate,
  validTo: calendarDate.nullable().default(null),
  isComplete: z
    .boolean()
    .default(false)
    .meta({ description: 'It names everything the supplier sells: what it does not name has ended' }),
  currency: currencySchema.nullable().default(null),
  taxIncluded: z.boolean().nullable().default(null),
  taxRate: shareText.nullable().default(null),
  taxRecoverable: shareText.nullable().default(null),
});

export const priceListSchema = z
  .strictObject({
    id: recordId,
    supplierId: recordId,
    supplierName: z.string(),
    name: z.string(),
    validFrom: calendarDate,
    validTo: calendarDate.nullable(),
    isComplete: z.boolean(),
    currency: currencySchema,
    taxIncluded: z.boolean(),
    taxRate: shareText,
    taxRecoverable: shareText,
    sourceName: z
      .string()
      .meta({ description: 'Name of the file it came from; empty where entered by hand' }),
    lineCount: z.number().int(),
    createdAt: moment,
  })
  .meta({ id: 'PriceList' });

export const exampleLineFields = {
  code: 'A-44-FAS',
  description: 'Ash 4/4 FAS rough',
  material: 'ASH-4/4',
  unit: 'board-foot',
  amount: '6.4',
  breakFrom: '0',
  breakKind: 'all-units',
  packSize: null,
  minimumQuantity: '20',
  leadDays: 7,
} as const;
export const exampleLine = {
  id: '0193f6a0-7c11-7000-8000-000000000041',
  itemId: '0193f6a0-7c11-7000-8000-000000000042',
  ...exampleLineFields,
  rowNumber: 1,
} as const;
export const examplePriceList = {
  id: '0193f6a0-7c11-7000-8000-000000000040',
  supplierId: '0193f6a0-7c11-7000-8000-000000000010',
  supplierName: 'Fernhollow Timber Yard (invented)',
  name: 'Spring 2026',
  validFrom: '2026-03-01',
  validTo: null,
  isComplete: false,
  currency: 'EUR',
  taxIncluded: false,
  taxRate: '0.2',
  taxRecoverable: '1',
  sourceName: '',
  lineCount: 1,
  createdAt: '2026-03-01T09:30:00.000Z',
} as const;
