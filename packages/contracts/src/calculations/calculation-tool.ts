import { ACQUISITIONS } from '@scantling/costing';
import { z } from 'zod';
import { decimalText } from '../decimal-text.ts';
import { toolDepreciationSchema } from '../tools/depreciation-method.ts';
import { leafId, leafName } from './calculation.ts';

/** A tool with everything its rate rests on, as a program hands it in. */
export const calculationToolSchema = z
  .strictObject({
    id: leafId,
    name: leafName,
    acquisition: z.enum(ACQUISITIONS),
    bookCost: decimalText,
    replacementCost: decimalText,
    salvage: decimalText,
    lifeYears: decimalText,
    lifeHours: decimalText.exactOptional(),
    hoursPerYear: decimalText,
    depreciation: toolDepreciationSchema,
    interestRate: decimalText,
    insuranceTaxRate: decimalText,
    floorAreaM2: decimalText,
    ratedKw: decimalText,
    load: decimalText,
    maintenanceShare: decimalText,
    maintenanceByHours: decimalText,
    cutters: z
      .array(
        z.strictObject({
          id: leafId,
          name: leafName,
          price: decimalText,
          sharpenings: decimalText,
          sharpeningPrice: decimalText,
          lifeHours: decimalText,
          isInMachineCost: z.boolean().exactOptional(),
        }),
      )
      .max(50),
    /** Machines that run whenever this one does, each with hours of its own. */
    get attached() {
      return z.array(calculationToolSchema).max(20);
    },
    hire: z
      .discriminatedUnion('by', [
        z.strictObject({ by: z.literal('hour'), price: decimalText }),
        z.strictObject({ by: z.literal('day'), price: decimalText, hoursPerDay: decimalText }),
      ])
      .exactOptional(),
    firstYear: z.number().int().exactOptional(),
    monthsInFirstYear: decimalText.exactOptional(),
    disposal: z
      .strictObject({ year: z.number().int(), months: decimalText, proceeds: decimalText })
      .exactOptional(),
  })
  .meta({ id: 'CalculationTool' });
