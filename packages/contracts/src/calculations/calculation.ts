import { CostingInputError } from '@scantling/costing';
import { z } from 'zod';
import { workingQuery } from '../figures.ts';

/** Calculations show their working unless `working=false` asks for the values alone. */
export const calculationQuery = workingQuery.extend({
  working: z
    .enum(['true', 'false'])
    .default('true')
    .transform((text) => text === 'true'),
});

export type WorkingOptions = Readonly<{ withDerivations: boolean }>;

/** The name a record goes by in labels and errors, and the id its leaves' keys begin with. */
export const leafId = z.string().trim().min(1).max(60);
export const leafName = z.string().trim().min(1).max(120);

/**
 * Runs a calculation on one record of a body, so that its errors name the field by its path in the whole body.
 * @param rename from the field as the calculation names it to the field as it stands in the body
 */
export function namingFields<T>(rename: (field: string) => string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof CostingInputError)) throw error;
    throw new CostingInputError(rename(error.field), error.reason, error.mend);
  }
}
