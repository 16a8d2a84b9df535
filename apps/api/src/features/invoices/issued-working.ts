import { frozenCreditSchema, frozenInvoiceSchema, type issuedWorkingSchema } from '@scantling/contracts';
import type { z } from 'zod';

/** How an invoice or credit note was worked out when it was issued, as it was kept then. */
export function readIssuedWorking(row: {
  readonly kind: string;
  readonly working: unknown;
}): z.output<typeof issuedWorkingSchema> {
  if (row.kind === 'credit-note') {
    const { invoiced, creditedBefore, ...rest } = frozenCreditSchema.parse(row.working);
    return { whole: invoiced, before: creditedBefore, ...rest };
  }
  const { contract, invoicedBefore, left, own, figures } = frozenInvoiceSchema.parse(row.working);
  const { net, tax, total } = contract;
  return { whole: { net, tax, total }, before: invoicedBefore, left, own, figures };
}
