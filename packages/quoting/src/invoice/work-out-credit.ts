import { entered, input, roundMoney } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { QuotingInputError } from '../input-error.ts';
import type { IssuedPaper } from './issued-paper.ts';
import { restOf, takeFrom } from './take-from.ts';
import { addByTax, readTaxRows, type TaxedAmount, totalsOfRows } from './taxed-amount.ts';
import type { RowTotals } from './work-out-invoice.ts';

export interface WorkedCredit {
  readonly invoiced: RowTotals;
  readonly creditedBefore: RowTotals;
  readonly left: RowTotals;
  readonly own: RowTotals & { readonly rows: readonly TaxedAmount[] };
}

/**
 * What a credit note takes back of an invoice: all that is left of it, or an amount with tax; the invoice stays as it is.
 * @throws QuotingInputError where it is itself a credit note, or that much is not left
 */
export function workOutCredit(given: {
  readonly currency: Currency;
  readonly invoice: IssuedPaper;
  /** Credit notes on this invoice. */
  readonly credits: readonly IssuedPaper[];
  /** With tax; null for all that is left. */
  readonly amount: string | null;
}): WorkedCredit {
  const { currency, invoice, credits, amount } = given;
  if (invoice.kind === 'credit-note')
    throw new QuotingInputError('id', 'is a credit note itself', 'credit an invoice');
  const rows = readTaxRows(invoice.taxes, {
    key: `issued/${invoice.id}`,
    text: `invoice ${invoice.number}`,
    currency,
  });
  const earlier = credits.flatMap(({ id, number, taxes }) =>
    readTaxRows(taxes, { key: `issued/${id}`, text: `credit note ${number}`, currency }),
  );
  const before = addByTax('credited before', earlier, rows, currency);
  const leftRows = restOf('left to credit', rows, before);
  const left = totalsOfRows('left to credit', leftRows, currency);
  const wanted =
    amount === null
      ? left.total
      : roundMoney(
          'this credit note',
          input({
            key: 'credit/amount',
            label: 'amount entered',
            unit: 'money',
            value: amount,
            currency,
            source: entered(),
          }),
        );
  const own = takeFrom(leftRows, left.total, wanted, { field: 'amount', label: 'this credit note' });
  return {
    invoiced: totalsOfRows('invoiced', rows, currency),
    creditedBefore: totalsOfRows('credited before', before, currency),
    left,
    own: { ...totalsOfRows('this credit note', own, currency), rows: own },
  };
}
