import { RECOVERY_YEARS } from '@scantling/costing';
import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';

const [first, ...others] = RECOVERY_YEARS;
const recoveryYears = z.union([z.literal(first), ...others.map((years) => z.literal(years))]);
export const straightLineSchema = z.strictObject({ name: z.literal('straight-line') });
export const sumOfYearsDigitsSchema = z.strictObject({ name: z.literal('sum-of-years-digits') });
export const decliningBalanceSchema = z.strictObject({
  name: z.literal('declining-balance'),
  /** "2" is double declining, "1.5" is 150 %. */
  factor: boundedDecimal({ digits: 2, places: 6, isPositive: true, example: '2' }),
  /** Straight line over the life that is left as soon as that is more. */
  hasSwitch: z.boolean(),
});
export const taxTableSchema = z.strictObject({
  name: z.literal('tax-table'),
  recoveryYears,
  decliningPercent: z.union([z.literal(200), z.literal(150)]),
});

/** How the books write a tool off; hours run are the units of its production. */
export const toolDepreciationSchema = z
  .discriminatedUnion('name', [
    straightLineSchema,
    sumOfYearsDigitsSchema,
    decliningBalanceSchema,
    taxTableSchema,
    z.strictObject({
      name: z.literal('units-of-production'),
      /** Hours run in each year, as measured; the planned hours a year where left out. */
      hoursByYear: z
        .array(boundedDecimal({ digits: 5, places: 3, example: '420' }))
        .max(200)
        .exactOptional(),
    }),
  ])
  .meta({ id: 'ToolDepreciation' });
