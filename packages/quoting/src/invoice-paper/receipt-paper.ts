import { decimal } from '@scantling/decimals';
import type { ReceiptDocument } from '../invoice/index.ts';
import type { Paper } from '../paper/index.ts';
import { billingPaper, billingWriters } from './billing-paper.ts';

/** The paper that says money was received. */
export function receiptPaper(document: ReceiptDocument): Paper {
  const { receivedOn, invoiceNumber, method, reference, amount, owedAfter, client, workshop } = document;
  const writers = billingWriters(document);
  const owed = decimal(owedAfter);
  const rest = owed.lt(0)
    ? { label: 'Paid too much', value: writers.money(owed.neg()) }
    : { label: 'Still open', value: writers.money(owed) };
  return {
    ...billingPaper(document, {
      kind: 'receipt',
      heading: 'Receipt',
      date: receivedOn,
      facts: [
        ['Received on', writers.date(receivedOn)],
        ['For invoice', invoiceNumber],
        ['Paid by', method],
        ['Reference', reference],
      ],
    }),
    intro: [
      `${workshop.name} has received ${writers.money(amount)} from ${client.name}.${
        owed.isZero() ? ` Invoice ${invoiceNumber} is settled with it.` : ''
      }`,
    ],
    totals: [
      ...(owed.isZero() ? [] : [{ ...rest, weight: 'plain' as const }]),
      { label: 'Received', value: writers.money(amount), weight: 'final' },
    ],
  };
}
