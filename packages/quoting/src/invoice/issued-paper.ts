import type { TaxRow } from './taxed-amount.ts';

export const INVOICE_KINDS = ['deposit', 'part', 'final', 'credit-note'] as const;
export type InvoiceKind = (typeof INVOICE_KINDS)[number];

/** An invoice or credit note that was issued, as later ones have to count it. */
export interface IssuedPaper {
  readonly id: string;
  readonly kind: InvoiceKind;
  readonly number: string;
  readonly issuedOn: string;
  /** The invoice a credit note takes back from. */
  readonly creditsId: string | null;
  /** The part of the agreed payments it asks for. */
  readonly scheduled: { readonly revisionId: string; readonly partId: string } | null;
  /** What it asks for itself, or takes back; always 0 or more in all. */
  readonly taxes: readonly TaxRow[];
  readonly total: string;
}
