import { calendarDate, currencySchema, shareText } from '@scantling/contracts';
import { z } from 'zod';
import { fieldProblem } from '../../problems/request-problem.ts';
import type { DatabaseAccess } from './database-access.ts';

/** What a price list says of all its lines, with nothing left to the supplier's record. */
export const listTermsSchema = z.strictObject({
  supplierId: z.string(),
  name: z.string(),
  validFrom: calendarDate,
  validTo: calendarDate.nullable(),
  isComplete: z.boolean(),
  currency: currencySchema,
  taxIncluded: z.boolean(),
  taxRate: shareText,
  taxRecoverable: shareText,
});
export type ListTermsRecord = z.output<typeof listTermsSchema>;

type Open<Value> = Value | null | undefined;

/** The terms as they are sent: what is left open is what the supplier's record says. */
export interface GivenTerms {
  readonly supplierId: string;
  readonly name: string;
  readonly validFrom: string;
  readonly validTo?: Open<string>;
  readonly isComplete?: boolean | undefined;
  readonly currency?: Open<ListTermsRecord['currency']>;
  readonly taxIncluded?: Open<boolean>;
  readonly taxRate?: Open<string>;
  readonly taxRecoverable?: Open<string>;
}

/** @throws RequestProblem input-invalid where there is no such supplier, or the list ends before it begins */
export async function completeTerms(database: DatabaseAccess, given: GivenTerms): Promise<ListTermsRecord> {
  const supplier = await database.supplier.findUnique({ where: { id: given.supplierId } });
  if (supplier === null)
    throw fieldProblem('supplierId', 'is no supplier', 'Enter the supplier first, or choose another.');
  const validTo = given.validTo ?? null;
  if (validTo !== null && validTo < given.validFrom)
    throw fieldProblem(
      'validTo',
      'is before validFrom',
      'Enter the last day the list holds, or leave it out.',
    );
  return {
    supplierId: supplier.id,
    name: given.name,
    validFrom: given.validFrom,
    validTo,
    isComplete: given.isComplete ?? false,
    currency: given.currency ?? currencySchema.parse(supplier.currency),
    taxIncluded: given.taxIncluded ?? supplier.taxIncluded,
    taxRate: given.taxRate ?? supplier.taxRate.toFixed(),
    taxRecoverable: given.taxRecoverable ?? supplier.taxRecoverable.toFixed(),
  };
}
