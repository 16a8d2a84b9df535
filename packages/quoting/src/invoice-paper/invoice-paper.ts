import { decimal } from '@scantling/decimals';
import { minorUnits } from '@scantling/money';
import type { BilledGroup, DeductedPaper, InvoiceDocument, InvoiceKind } from '../invoice/index.ts';
import {
  type GroupToWrite,
  type LineToWrite,
  type Paper,
  type PaperDeducted,
  type PaperWriters,
  paperLines,
  paperPayment,
  paperTaxes,
  paperTotals,
  type TotalsToWrite,
} from '../paper/index.ts';
import { lineUnit, quantityText } from '../quote/line-unit.ts';
import { billingPaper, billingWriters, notes, taxesToWrite } from './billing-paper.ts';
import { taxRoundingSection } from './tax-rounding.ts';

export const INVOICE_HEADINGS: Readonly<Record<InvoiceKind, string>> = {
  deposit: 'Deposit invoice',
  part: 'Part invoice',
  final: 'Final invoice',
  'credit-note': 'Credit note',
};

function billedLine(line: BilledGroup['lines'][number], places: number): LineToWrite {
  const one = decimal(line.price).div(decimal(line.priceBase));
  const hasUnitPrice = decimal(line.priceBase).eq(1) || one.decimalPlaces() <= places;
  return {
    description: line.description,
    details: line.details === '' ? [] : line.details.split('\n'),
    quantity: quantityText(line.quantity, lineUnit(line)),
    ...(hasUnitPrice ? { unitPrice: one.toString() } : {}),
    amount: line.amount,
  };
}

function groupsOf(document: InvoiceDocument): GroupToWrite[] {
  const places = minorUnits(document.currency);
  if (document.groups.length === 0)
    return [{ lines: [{ description: document.what, quantity: '1', amount: document.net }] }];
  return document.groups.map((group) => ({
    heading: `${group.kind === 'quote' ? 'Quote' : 'Addition'} ${group.number}`,
    ...(group.priceMode === 'inclusive' ? { note: 'Prices with tax.' } : {}),
    lines: group.lines.map((line) => billedLine(line, places)),
  }));
}

function add(values: readonly string[]): string {
  return values.reduce((sum, value) => sum.plus(value), decimal(0)).toString();
}

function deductedLabel({ number, kind }: DeductedPaper): string {
  return kind === 'credit-note' ? `Credit note ${number}` : `${INVOICE_HEADINGS[kind]} ${number}`;
}

function totalsOf(document: InvoiceDocument): TotalsToWrite {
  const { groups, contract, net, taxes, total, deducted } = document;
  if (contract === null)
    return {
      priceMode: 'exclusive',
      sumOfLines: net,
      discount: '0',
      net,
      taxes: taxesToWrite(taxes),
      total,
    };
  return {
    priceMode: groups.every(({ priceMode }) => priceMode === 'inclusive') ? 'inclusive' : 'exclusive',
    sumOfLines: add(groups.map(({ sumOfLines }) => sumOfLines)),
    discount: add(groups.map(({ discount }) => discount)),
    net: contract.net,
    taxes: taxesToWrite(contract.taxes),
    total: contract.total,
    prepaid: deducted.map((paper) => ({ label: deductedLabel(paper), amount: paper.total })),
    payable: total,
  };
}

/** The tax in each paper that is deducted, so that it is seen to be charged once only; then what is left. */
function deductedTable(document: InvoiceDocument, writers: PaperWriters): PaperDeducted | null {
  const { deducted, taxes, net, tax, total } = document;
  if (deducted.length === 0) return null;
  const row = (
    label: string,
    sums: { net: string; tax: string; total: string },
    weight: 'plain' | 'final' = 'plain',
  ) => ({
    label,
    net: writers.money(sums.net),
    tax: writers.money(sums.tax),
    total: writers.money(sums.total),
    weight,
  });
  const byRate = taxes.map(({ name, net: own, taxAmount }) =>
    row(`Left of it, ${name}`, { net: own, tax: taxAmount, total: add([own, taxAmount]) }),
  );
  return {
    heading: 'Invoiced before',
    heads: { label: 'Paper', net: 'Without tax', tax: 'Tax', total: 'With tax' },
    rows: [
      ...deducted.map((paper) => row(`${deductedLabel(paper)} of ${writers.date(paper.issuedOn)}`, paper)),
      ...(taxes.length > 1 ? byRate : []),
      row('What is left, asked for here', { net, tax, total }, 'final'),
    ],
    note: 'The tax in earlier invoices was charged there and is not charged again.',
  };
}

/** The paper of an invoice or credit note. What the law wants on it differs by country: the accountant knows. */
export function invoicePaper(document: InvoiceDocument): Paper {
  const { kind, number, issuedOn, suppliedOn, dueOn, credits, total, workshop } = document;
  const writers = billingWriters(document);
  const isCredit = kind === 'credit-note';
  const written = totalsOf(document);
  const supply = isCredit ? null : suppliedOn === null ? 'not yet supplied' : writers.date(suppliedOn);
  const paper = billingPaper(document, {
    kind: isCredit ? 'credit-note' : 'invoice',
    heading: INVOICE_HEADINGS[kind],
    date: issuedOn,
    facts: [
      ['Date', writers.date(issuedOn)],
      ['Date of supply', supply],
      ['Due', isCredit ? null : writers.date(dueOn)],
      ['Our quote', document.quoteNumber],
      ['Your order', document.orderNumber],
      ['Credits', credits === null ? null : `invoice ${credits.number} of ${writers.date(credits.issuedOn)}`],
    ],
  });
  const words = { total: isCredit ? 'Credited' : 'Total', payable: 'To pay' };
  return {
    ...paper,
    intro: notes(document.note),
    lines: paperLines(groupsOf(document), writers),
    totals: paperTotals(written, writers, words),
    taxes: paperTaxes(written, writers),
    deducted: deductedTable(document, writers),
    sections: taxRoundingSection(document),
    payment:
      isCredit || decimal(total).lte(0)
        ? null
        : paperPayment(
            { amount: total, dueOn, reference: number, bankLines: workshop.bankLines, note: null },
            writers,
          ),
  };
}
