import { COSTING_BASES, type CostTerms, ENTERED_PER, OVERHEAD_AT } from '@scantling/costing';
import { z } from 'zod';
import { nonNegativeDecimalText, positiveDecimalText, shareText } from '../decimal-text.ts';
import { rowId } from '../designs/bill.ts';
import { unitSystemSchema } from '../designs/design.ts';
import { parameterValuesSchema } from '../designs/parameters.ts';
import { ownValuesSchema } from '../own-values/own-value.ts';
import { calendarDate, givenName, moment, recordId } from '../record.ts';

export const pricePolicySchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('markup'), markup: nonNegativeDecimalText }),
    z.strictObject({
      kind: z.literal('markup-by-class'),
      materials: nonNegativeDecimalText,
      labour: nonNegativeDecimalText,
      machines: nonNegativeDecimalText,
      other: nonNegativeDecimalText,
    }),
    z.strictObject({ kind: z.literal('margin'), margin: shareText }),
    z.strictObject({ kind: z.literal('hourly-earnings'), perHour: nonNegativeDecimalText }),
    z.strictObject({
      kind: z.literal('entered'),
      price: nonNegativeDecimalText,
      per: z.enum(ENTERED_PER).exactOptional(),
    }),
  ])
  .meta({ id: 'PricePolicy' });

/** Rounding to a pleasant price: to a multiple of an amount. */
export const priceStepSchema = z.strictObject({
  to: positiveDecimalText,
  direction: z.enum(['up', 'nearest']),
});

export const costTermsSchema: z.ZodType<CostTerms, CostTerms> = z
  .strictObject({
    promisedDate: calendarDate.exactOptional(),
    overheadAt: z.enum(OVERHEAD_AT).exactOptional(),
    freight: nonNegativeDecimalText,
    contingency: shareText,
    quotingHours: nonNegativeDecimalText,
    buyingHours: nonNegativeDecimalText,
    deliveryHours: nonNegativeDecimalText,
    discount: shareText,
    policy: pricePolicySchema,
    priceStep: priceStepSchema.exactOptional(),
  })
  .meta({ id: 'CostTerms' });

export const quantitiesSchema = z.array(z.number().int().min(1).max(2000)).min(1).max(12);

/** Which form of a design is costed. */
export const designChoiceFields = {
  /** The revision it is pinned to; null follows the newest. */
  revision: z.number().int().min(1).nullable().default(null),
  /** Id of a variant; null: as drawn. */
  variant: rowId.nullable().default(null),
  /** Values of single parameters, over those of the variant. */
  parameterValues: parameterValuesSchema.default({}),
};

export const costSheetFields = {
  title: givenName,
  designId: recordId,
  ...designChoiceFields,
  clientId: recordId.nullable(),
  basis: z.enum(COSTING_BASES),
  /** The day whose prices are used; null means today, whenever it is read. */
  onDate: calendarDate.nullable(),
  quantities: quantitiesSchema,
  terms: costTermsSchema,
};

export const costSheetSchema = z.strictObject({
  id: recordId,
  ...costSheetFields,
  /** Values that stand on this sheet alone. */
  ownValues: ownValuesSchema,
  designCode: z.string(),
  designName: z.string(),
  /** Number of the design's newest revision. */
  newestRevision: z.number().int(),
  /** How lengths of this design are shown. */
  unitSystem: unitSystemSchema,
  clientName: z.string().nullable(),
  isDemo: z.boolean(),
  updatedAt: moment,
  version: z.number().int(),
});

export const exampleTerms: CostTerms = {
  freight: '60',
  contingency: '0.05',
  quotingHours: '1.5',
  buyingHours: '1',
  deliveryHours: '2',
  discount: '0',
  policy: { kind: 'margin', margin: '0.3' },
  priceStep: { to: '5', direction: 'up' },
};

export const exampleCostSheet: z.input<typeof costSheetSchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000020',
  title: 'Hall bench for the Pemberwick house',
  designId: '0193f6a0-7c11-7000-8000-000000000010',
  revision: null,
  variant: 'long',
  parameterValues: { length: '1400' },
  clientId: null,
  basis: 'shop',
  onDate: '2026-03-01',
  quantities: [1, 2, 5],
  terms: exampleTerms,
  ownValues: [],
  designCode: 'BENCH',
  designName: 'Hall bench',
  newestRevision: 3,
  unitSystem: 'metric',
  clientName: null,
  isDemo: false,
  updatedAt: '2026-03-01T09:30:00.000Z',
  version: 1,
};
