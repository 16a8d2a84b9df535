import { z } from 'zod';
import { moneyText, shareText } from '../decimal-text.ts';
import { currencySchema } from '../figures.ts';
import { givenName, recordId } from '../record.ts';

/** A code people give to a record: no white space at its ends, unique among its kind. */
export const givenCode = z.string().trim().min(1).max(100);
export const wholeDays = z.number().int().min(0).max(9999);
export const notesText = z.string().max(10_000);

/** What a supplier is entered with; tax, freight and lead time hold for lists that do not say otherwise. */
export const supplierFields = z.strictObject({
  code: givenCode,
  name: givenName,
  currency: currencySchema,
  taxIncluded: z.boolean().default(false),
  taxRate: shareText.default('0'),
  taxRecoverable: shareText
    .default('1')
    .meta({ description: 'Share of the tax on purchases that the workshop gets back' }),
  minimumOrder: moneyText.nullable().default(null),
  freightPerOrder: moneyText.nullable().default(null),
  leadDays: wholeDays.nullable().default(null),
  notes: notesText.default(''),
});

export const supplierSchema = z
  .strictObject({
    id: recordId,
    ...supplierFields.shape,
    isDemo: z.boolean(),
    version: z.number().int(),
  })
  .meta({ id: 'Supplier' });
export type Supplier = z.output<typeof supplierSchema>;

export const exampleSupplierFields = {
  code: 'YARD',
  name: 'Fernhollow Timber Yard (invented)',
  currency: 'EUR',
  taxIncluded: false,
  taxRate: '0.2',
  taxRecoverable: '1',
  minimumOrder: '50',
  freightPerOrder: '45',
  leadDays: 7,
  notes: '',
} as const;
export const exampleSupplier = {
  id: '0193f6a0-7c11-7000-8000-000000000010',
  ...exampleSupplierFields,
  isDemo: false,
  version: 1,
} as const;
