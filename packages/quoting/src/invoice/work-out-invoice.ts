import { sumOf } from '@scantling/decimals';
import { entered, type Figure, input, named, roundMoney, scale } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { QuotingInputError } from '../input-error.ts';
import { type AgreedPart, agreedRows } from './agreed-part.ts';
import type { IssuedPaper } from './issued-paper.ts';
import { restOf, takeFrom } from './take-from.ts';
import { addByTax, readTaxRows, type TaxedAmount, totalsOfRows } from './taxed-amount.ts';

/** Which invoice is wanted: an agreed payment, a part of the contract, or all that is left of it. */
export type InvoiceWanted =
  | { readonly kind: 'deposit'; readonly revisionId: string; readonly partId: string }
  | { readonly kind: 'part'; readonly share: string }
  | { readonly kind: 'part'; readonly amount: string }
  | { readonly kind: 'final' };

export interface RowTotals {
  readonly net: Figure<'money'>;
  readonly tax: Figure<'money'>;
  readonly total: Figure<'money'>;
}

export interface WorkedInvoice {
  /** Original and accepted additions. */
  readonly contract: RowTotals & { readonly rows: readonly TaxedAmount[] };
  /** By earlier invoices, less what was credited. */
  readonly invoicedBefore: RowTotals;
  /** What is left of the contract before this one. */
  readonly left: RowTotals;
  /** What this one asks for. */
  readonly own: RowTotals & { readonly rows: readonly TaxedAmount[] };
}

const negated = (paper: IssuedPaper): IssuedPaper => ({
  ...paper,
  taxes: paper.taxes.map((row) => ({
    ...row,
    net: minus(row.net),
    taxAmount: minus(row.taxAmount),
  })),
});
const minus = (text: string) =>
  text.startsWith('-') ? text.slice(1) : /[1-9]/.test(text) ? `-${text}` : text;

function rowsBefore(before: readonly IssuedPaper[], currency: Currency): TaxedAmount[] {
  return before.flatMap((paper) => {
    const isCredit = paper.kind === 'credit-note';
    const { id, number, taxes } = isCredit ? negated(paper) : paper;
    const text = `${isCredit ? 'credit note' : 'invoice'} ${number}`;
    return readTaxRows(taxes, { key: `issued/${id}`, text, currency });
  });
}

function creditedOf(invoice: IssuedPaper, before: readonly IssuedPaper[]): boolean {
  const credits = before.filter(({ creditsId }) => creditsId === invoice.id);
  const credited = sumOf(credits.map(({ total }) => total));
  return credits.length > 0 && credited.gte(invoice.total);
}

function depositAmount(
  wanted: Extract<InvoiceWanted, { kind: 'deposit' }>,
  parts: readonly AgreedPart[],
  before: readonly IssuedPaper[],
): Figure<'money'> {
  const part = parts.find(({ id }) => id === wanted.revisionId);
  const scheduled = part?.document.schedule.find(({ id }) => id === wanted.partId);
  const amount = part?.totals.schedule.find(({ id }) => id === wanted.partId)?.amount;
  if (part === undefined || scheduled === undefined || amount === undefined)
    throw new QuotingInputError('partId', 'names no agreed payment', 'choose one of the payments agreed');
  const earlier = before.find(
    (one) =>
      one.scheduled?.revisionId === wanted.revisionId &&
      one.scheduled.partId === wanted.partId &&
      !creditedOf(one, before),
  );
  if (earlier !== undefined)
    throw new QuotingInputError(
      'partId',
      `is asked for by invoice ${earlier.number} already`,
      'choose another payment, or credit that invoice first',
    );
  return input({
    key: `agreed/${part.id}/schedule/${scheduled.id}`,
    label: scheduled.label,
    unit: 'money',
    value: amount,
    currency: part.document.currency,
    source: entered(`agreed in ${part.document.number}`),
  });
}

function partAmount(
  wanted: Extract<InvoiceWanted, { kind: 'part' }>,
  contract: Figure<'money'>,
  currency: Currency,
): Figure<'money'> {
  if ('share' in wanted) {
    const share = input({
      key: 'part/share',
      label: 'share of the contract',
      unit: 'ratio',
      value: wanted.share,
      source: entered(),
    });
    return roundMoney('this part', scale('this part before rounding', contract, share));
  }
  const amount = input({
    key: 'part/amount',
    label: 'amount entered',
    unit: 'money',
    value: wanted.amount,
    currency,
    source: entered(),
  });
  return roundMoney('this part', amount);
}

/**
 * What an invoice asks for, tax by tax. Deposit and part take an amount with tax out of what is left of the contract; a
 * final invoice takes all of it, so that all invoices less all credits come to the contract to the minor unit.
 * @throws QuotingInputError where nothing, or not so much, is left; where a payment was asked for already
 */
export function workOutInvoice(given: {
  readonly currency: Currency;
  readonly parts: readonly AgreedPart[];
  readonly before: readonly IssuedPaper[];
  readonly wanted: InvoiceWanted;
}): WorkedInvoice {
  const { currency, parts, before, wanted } = given;
  const agreed = parts.flatMap(agreedRows);
  const contractRows = addByTax('contract', agreed, agreed, currency);
  const contract = totalsOfRows('contract', contractRows, currency);
  const earlier = addByTax('invoiced before', rowsBefore(before, currency), contractRows, currency);
  const invoicedBefore = totalsOfRows('invoiced before', earlier, currency);
  const leftRows = restOf('left', contractRows, earlier);
  const left = totalsOfRows('left', leftRows, currency);
  const rows = ownRows();
  return {
    contract: { ...contract, rows: contractRows },
    invoicedBefore,
    left,
    own: { ...totalsOfRows('this invoice', rows, currency), rows },
  };

  function ownRows(): readonly TaxedAmount[] {
    if (wanted.kind === 'final') {
      const isBilled = before.some((one) => one.kind === 'final' && !creditedOf(one, before));
      if (left.total.value.lt(0) || (left.total.value.isZero() && isBilled))
        throw new QuotingInputError(
          'kind',
          `leaves nothing to ask for: ${invoicedBefore.total.value} of ${contract.total.value} are invoiced`,
          'credit an invoice first, or have an addition accepted',
        );
      return leftRows;
    }
    const [field, amount] =
      wanted.kind === 'deposit'
        ? (['partId', depositAmount(wanted, parts, before)] as const)
        : (['share' in wanted ? 'share' : 'amount', partAmount(wanted, contract.total, currency)] as const);
    return takeFrom(leftRows, left.total, named('this invoice', amount), { field, label: 'this invoice' });
  }
}
