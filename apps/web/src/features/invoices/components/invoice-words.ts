import type { InvoiceKind, InvoiceState } from '../api/list-invoices.ts';

export const STATE_WORDS: Readonly<Record<InvoiceState, string>> = {
  open: 'Open',
  'part-paid': 'Part paid',
  paid: 'Paid',
  overdue: 'Overdue',
  credited: 'Credited',
};

export const KIND_WORDS: Readonly<Record<InvoiceKind, string>> = {
  deposit: 'Deposit invoice',
  part: 'Part invoice',
  final: 'Final invoice',
  'credit-note': 'Credit note',
};

export function isInvoiceState(text: unknown): text is InvoiceState {
  return typeof text === 'string' && text in STATE_WORDS;
}

export function isInvoiceKind(text: unknown): text is InvoiceKind {
  return typeof text === 'string' && text in KIND_WORDS;
}

/** "Overdue by 9 days", "Paid"; a credit note has no state of its own. */
export function standing(state: InvoiceState | null, daysOverdue: number): string {
  if (state === null) return 'Given back';
  if (state !== 'overdue') return STATE_WORDS[state];
  return `Overdue by ${daysOverdue} ${daysOverdue === 1 ? 'day' : 'days'}`;
}
