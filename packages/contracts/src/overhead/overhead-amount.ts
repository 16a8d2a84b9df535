import { HOMES, RATE_LINE_KINDS } from '@scantling/costing';
import { z } from 'zod';
import { moneyText } from '../decimal-text.ts';
import { givenName, recordId } from '../record.ts';

/** What rates recover: the kinds of a machine-hour rate's lines, and pay with its burden for labour rates. */
export const RECOVERIES = [...RATE_LINE_KINDS.filter((kind) => kind !== 'attached'), 'pay'] as const;

export const overheadAmountInputSchema = z.strictObject({
  name: givenName,
  yearlyAmount: moneyText,
  /** Where it is recovered: each amount has one home. */
  home: z.enum(HOMES),
  /** The part of rates that recovers it, or a part of it; a pool is net of that part. null where none does. */
  recoveredAs: z.enum(RECOVERIES).nullable(),
  note: z.string().max(2000),
});

export const overheadAmountSchema = overheadAmountInputSchema
  .extend({ id: recordId, isDemo: z.boolean(), version: z.number().int() })
  .meta({ id: 'OverheadAmount' });
export type OverheadAmountRecord = z.output<typeof overheadAmountSchema>;

export const exampleOverheadAmountInput = {
  name: 'Rent',
  yearlyAmount: '9600',
  home: 'workshop-pool',
  recoveredAs: 'floor',
  note: 'The floor of machines is in their rates; the rest is here.',
} as const;
export const exampleOverheadAmount = {
  ...exampleOverheadAmountInput,
  id: '0193f6a0-7c11-7000-8000-000000000002',
  isDemo: false,
  version: 1,
} as const;
