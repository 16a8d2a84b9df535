import type { DecimalLike } from '@scantling/decimals';
import type { PaperPayment, PaperSchedule } from './paper.ts';
import type { PaperWriters } from './paper-style.ts';

export interface PartToWrite {
  /** "Deposit", "On delivery". */
  readonly label: string;
  /** Fraction of the total; null for a part that is an amount. */
  readonly share: DecimalLike | null;
  /** "on acceptance", a written day. */
  readonly due: string;
  readonly amount: DecimalLike;
}

/** In which parts the total is paid; null where none are agreed. */
export function paperSchedule(parts: readonly PartToWrite[], writers: PaperWriters): PaperSchedule | null {
  if (parts.length === 0) return null;
  return {
    heading: 'Payments',
    heads: { part: 'Part', due: 'Due', amount: 'Amount' },
    rows: parts.map(({ label, share, due, amount }) => ({
      part: share === null ? label : `${label}, ${writers.percent(share)}`,
      due,
      amount: writers.money(amount),
    })),
  };
}

export interface PaymentToAsk {
  readonly amount: DecimalLike;
  /** ISO 8601 day; null where it is due at once. */
  readonly dueOn: string | null;
  /** What the client writes beside the payment. */
  readonly reference: string;
  readonly bankLines: readonly string[];
  readonly note: string | null;
}

/** How an invoice is paid. */
export function paperPayment(payment: PaymentToAsk, writers: PaperWriters): PaperPayment {
  const { amount, dueOn, reference, bankLines, note } = payment;
  const bank = bankLines.filter((line) => line.trim() !== '').join('\n');
  return {
    heading: 'Payment',
    facts: [
      { label: 'Amount', value: writers.money(amount) },
      { label: 'Due', value: dueOn === null ? 'on receipt' : writers.date(dueOn) },
      { label: 'Reference', value: reference },
      ...(bank === '' ? [] : [{ label: 'To', value: bank }]),
    ],
    note,
  };
}
