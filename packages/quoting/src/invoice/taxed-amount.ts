import { definition, entered, type Figure, input, sum } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import type { QuoteTax } from '../quote-totals/index.ts';

/** What falls under one tax, as decimal text: what papers state and what is kept. */
export interface TaxRow extends Omit<QuoteTax, 'id'> {
  readonly net: string;
  readonly taxAmount: string;
}

/** What falls under one tax, as figures; the gross is net and tax together. */
export interface TaxedAmount {
  readonly key: string;
  readonly tax: Omit<QuoteTax, 'id'>;
  readonly net: Figure<'money'>;
  readonly taxAmount: Figure<'money'>;
  readonly gross: Figure<'money'>;
}

/** Taxes are the same where category, rate and name are, whatever id a quote gave them. */
export function taxKey({ category, rate, name }: Omit<QuoteTax, 'id'>): string {
  return [category, Number(rate), name].join(' ');
}

/** The rate of its tax, a leaf. */
export function rateOf({ key, tax }: Pick<TaxedAmount, 'key' | 'tax'>): Figure<'ratio'> {
  return input({
    key: `tax/${key}/rate`,
    label: `${tax.name}: rate`,
    unit: 'ratio',
    value: tax.rate,
    source: definition('the tax as agreed'),
  });
}

/** Stated rows as leaves: amounts that stand on a paper the client has. */
export function readTaxRows(
  rows: readonly TaxRow[],
  from: { readonly key: string; readonly text: string; readonly currency: Currency },
): TaxedAmount[] {
  return rows.map((row) => {
    const { net, taxAmount, ...tax } = row;
    const key = taxKey(tax);
    const leaf = (what: string, value: string) =>
      input({
        key: `${from.key}/${key}/${what}`,
        label: `${from.text}: ${tax.name}, ${what}`,
        unit: 'money',
        value,
        currency: from.currency,
        source: entered(from.text),
      });
    const figures = { net: leaf('net', net), taxAmount: leaf('tax', taxAmount) };
    const gross = sum(`${from.text}: ${tax.name}`, 'money', [figures.net, figures.taxAmount]);
    return { key, tax, ...figures, gross };
  });
}

/** Rows of several papers added tax by tax, in the order in which taxes are met. */
export function addByTax(
  label: string,
  rows: readonly TaxedAmount[],
  keys: readonly TaxedAmount[],
  currency: Currency,
): TaxedAmount[] {
  const firsts = new Map([...keys, ...rows].map((row) => [row.key, row.tax]));
  return [...firsts].map(([key, tax]) => {
    const own = rows.filter((row) => row.key === key);
    const of = (what: string, pick: (row: TaxedAmount) => Figure<'money'>) =>
      sum(`${label}, ${tax.name}: ${what}`, 'money', own.map(pick), currency);
    return {
      key,
      tax,
      net: of('without tax', ({ net }) => net),
      taxAmount: of('tax', ({ taxAmount }) => taxAmount),
      gross: of('with tax', ({ gross }) => gross),
    };
  });
}

export function statedRows(rows: readonly TaxedAmount[]): TaxRow[] {
  return rows.map(({ tax, net, taxAmount }) => ({
    ...tax,
    net: net.value.toString(),
    taxAmount: taxAmount.value.toString(),
  }));
}

/** Net, tax and total of rows. */
export function totalsOfRows(label: string, rows: readonly TaxedAmount[], currency: Currency) {
  const of = (what: string, pick: (row: TaxedAmount) => Figure<'money'>) =>
    sum(`${label}, ${what}`, 'money', rows.map(pick), currency);
  return {
    net: of('without tax', ({ net }) => net),
    tax: of('tax', ({ taxAmount }) => taxAmount),
    total: of('with tax', ({ gross }) => gross),
  };
}
