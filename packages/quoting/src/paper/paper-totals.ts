import { type DecimalLike, decimal } from '@scantling/decimals';
import type { PaperFact, PaperTaxes, PaperTotal } from './paper.ts';
import type { PaperWriters } from './paper-style.ts';

/** What one tax category comes to. */
export interface TaxToWrite {
  /** "VAT", "Sales tax". */
  readonly name: string;
  /** Fraction; 0 is not written beside the name. */
  readonly rate: DecimalLike;
  /** Without tax. */
  readonly taxable: DecimalLike;
  readonly tax: DecimalLike;
  /** Why no tax is charged; empty where there is nothing to say. */
  readonly reason: string;
}

/** The totals of a quote or invoice, worked out already. */
export interface TotalsToWrite {
  /** Whether the amounts of the lines hold the tax. */
  readonly priceMode: 'exclusive' | 'inclusive';
  readonly sumOfLines: DecimalLike;
  /** Taken off the sum of the lines; 0 where there is none. */
  readonly discount: DecimalLike;
  readonly net: DecimalLike;
  readonly taxes: readonly TaxToWrite[];
  readonly total: DecimalLike;
  /** What was paid or billed before, each with its words: "Deposit, invoice INV-2026-0003". */
  readonly prepaid?: readonly { readonly label: string; readonly amount: DecimalLike }[];
  /** The total less what is prepaid; needed where something is. */
  readonly payable?: DecimalLike;
}

/** The words for the one amount the paper is about. */
export interface TotalWords {
  readonly total: string;
  readonly payable: string;
}

const USUAL_WORDS: TotalWords = { total: 'Total', payable: 'To pay' };

function nameOf({ name, rate }: TaxToWrite, writers: PaperWriters): string {
  return decimal(rate).isZero() ? name : `${name} ${writers.percent(rate)}`;
}

/** The rows under the table of lines, the answer last. @throws NotADecimalError */
export function paperTotals(
  totals: TotalsToWrite,
  writers: PaperWriters,
  words: TotalWords = USUAL_WORDS,
): PaperTotal[] {
  const { money } = writers;
  const plain = (label: string, value: DecimalLike): PaperTotal => ({
    label,
    value: money(value),
    weight: 'plain',
  });
  const isInclusive = totals.priceMode === 'inclusive';
  const discount = decimal(totals.discount);
  const prepaid = totals.prepaid ?? [];
  const taxed = totals.taxes.filter(({ tax, rate }) => !decimal(tax).isZero() || !decimal(rate).isZero());
  const before = discount.isZero()
    ? []
    : [plain('Sum of lines', totals.sumOfLines), plain('Discount', discount.neg())];
  const taxRows = taxed.map((tax) =>
    plain(isInclusive ? `Including ${nameOf(tax, writers)}` : nameOf(tax, writers), tax.tax),
  );
  const net: PaperTotal[] =
    isInclusive || taxed.length === 0
      ? []
      : [
          {
            label: 'Total without tax',
            value: money(totals.net),
            weight: before.length > 0 ? 'sum' : 'plain',
          },
        ];
  const total = money(totals.total);
  if (prepaid.length === 0)
    return [...before, ...net, ...taxRows, { label: words.total, value: total, weight: 'final' }];
  return [
    ...before,
    ...net,
    ...taxRows,
    { label: words.total, value: total, weight: 'sum' },
    ...prepaid.map(({ label, amount }) => plain(label, decimal(amount).neg())),
    { label: words.payable, value: money(totals.payable ?? totals.total), weight: 'final' },
  ];
}

/** The tax by category: shown where there are several, a reason has to be given, or prices hold the tax. */
export function paperTaxes(totals: TotalsToWrite, writers: PaperWriters): PaperTaxes | null {
  const { taxes, priceMode } = totals;
  const says = taxes.some(({ reason }) => reason.trim() !== '');
  if (taxes.length === 0 || (taxes.length === 1 && !says && priceMode === 'exclusive')) return null;
  return {
    heading: 'Tax',
    heads: { category: 'Category', taxable: 'Without tax', tax: 'Tax' },
    rows: taxes.map((tax) => ({
      category: nameOf(tax, writers),
      taxable: writers.money(tax.taxable),
      tax: writers.money(tax.tax),
      note: tax.reason.trim() === '' ? null : tax.reason,
    })),
  };
}

/** The title block: facts whose value is not known are left out. */
export function paperFacts(facts: readonly (readonly [label: string, value: string | null])[]): PaperFact[] {
  return facts.flatMap(([label, value]) => (value === null || value.trim() === '' ? [] : [{ label, value }]));
}
