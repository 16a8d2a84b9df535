import { type Formula, MOST_FORMULA_LETTERS } from '@scantling/costing';
import { z } from 'zod';

/** Arithmetic over the parameters of the design, instead of a number. */
export const formulaSchema: z.ZodType<Formula, Formula> = z
  .strictObject({ formula: z.string().trim().min(1).max(MOST_FORMULA_LETTERS) })
  .meta({ id: 'Formula', examples: [{ formula: 'length - 2 * leg' }] });

/** A number, or the formula it is worked out by. */
export function orFormula<Schema extends z.ZodType>(schema: Schema) {
  return z.union([schema, formulaSchema]);
}
