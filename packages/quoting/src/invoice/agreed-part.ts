import type { ClientDocument, DocumentLine, StatedTotals } from '../quote/client-document.ts';
import { countedLines } from '../quote-totals/counted-lines.ts';
import { readTaxRows, type TaxedAmount } from './taxed-amount.ts';

/** The quote, or an addition to it, as the client accepted it. */
export interface AgreedPart {
  readonly id: string;
  readonly document: ClientDocument;
  readonly chosen: readonly string[];
  /** With what was chosen. */
  readonly totals: StatedTotals;
}

/** The lines that were ordered: what was included and what was chosen. */
export function orderedLines({ document, chosen }: AgreedPart): DocumentLine[] {
  const labelled = document.lines.map(({ id, description: label, choice }) => ({ id, label, choice }));
  const counted = countedLines({ lines: labelled, chosen });
  return document.lines.filter(({ id }) => counted.has(id));
}

/** What was accepted, tax by tax. */
export function agreedRows({ id, document, totals }: AgreedPart): TaxedAmount[] {
  const rows = totals.taxes.flatMap(({ id: taxId, net, tax: taxAmount }) => {
    const own = document.taxes.find((one) => one.id === taxId);
    if (own === undefined) return [];
    const { category, rate, name, exemptionReason } = own;
    return [{ category, rate, name, exemptionReason, net, taxAmount }];
  });
  const { number, currency } = document;
  return readTaxRows(rows, { key: `agreed/${id}`, text: `accepted as ${number}`, currency });
}
