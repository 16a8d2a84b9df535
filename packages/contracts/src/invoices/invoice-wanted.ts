import type { InvoiceWanted } from '@scantling/quoting';
import { z } from 'zod';
import { moneyText, shareText } from '../decimal-text.ts';
import { partId } from '../quotes/quote-terms.ts';
import { calendarDate, recordId } from '../record.ts';
import { singleLine } from '../single-line.ts';

const common = {
  /** When the work was or will be handed over. */
  suppliedOn: calendarDate.nullable().default(null),
  /** By when it is to be paid; the workshop's days of payment where nothing is said. */
  dueOn: calendarDate.optional(),
  /** The client's own number for the order. */
  orderNumber: singleLine(60).default(''),
  note: z.string().trim().max(2000).default(''),
};

/** Which invoice is wanted, and what it says besides its sums. */
export const invoiceWantedSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('deposit'),
      /** The accepted quote or addition, and one of the payments agreed in it. */
      revisionId: recordId,
      partId,
      ...common,
    }),
    z.strictObject({
      kind: z.literal('part'),
      of: z.discriminatedUnion('kind', [
        /** Of the contract with tax. */
        z.strictObject({ kind: z.literal('share'), share: shareText }),
        /** With tax. */
        z.strictObject({ kind: z.literal('amount'), amount: moneyText }),
      ]),
      ...common,
    }),
    z.strictObject({ kind: z.literal('final'), ...common }),
  ])
  .meta({ id: 'InvoiceWanted' });
export type InvoiceWantedGiven = z.output<typeof invoiceWantedSchema>;

export function toInvoiceWanted(given: InvoiceWantedGiven): InvoiceWanted {
  if (given.kind === 'deposit')
    return { kind: 'deposit', revisionId: given.revisionId, partId: given.partId };
  if (given.kind === 'final') return { kind: 'final' };
  return given.of.kind === 'share'
    ? { kind: 'part', share: given.of.share }
    : { kind: 'part', amount: given.of.amount };
}
