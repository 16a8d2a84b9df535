import {
  difference,
  divide,
  type Figure,
  increment,
  roundMoney,
  scale,
  shareOut,
  sum,
} from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { QuotingInputError } from '../input-error.ts';
import type { PriceMode, QuoteTax } from './totals-input.ts';

/** What falls under one rate of tax. */
export interface CategoryTotals {
  readonly tax: QuoteTax;
  readonly rate: Figure<'ratio'>;
  /** The counted lines under it. */
  readonly lines: Figure<'money'>;
  /** Its part of the discount. */
  readonly discount: Figure<'money'>;
  readonly net: Figure<'money'>;
  readonly taxAmount: Figure<'money'>;
  readonly gross: Figure<'money'>;
  /**
   * Inclusive prices only: the tax less what BR-CO-17 of EN 16931 gives on the net. Within one minor unit, because
   * the gross is fixed and net and tax are both rounded.
   */
  readonly differenceFromNetRule: Figure<'money'> | null;
}

export interface TaxedLines {
  readonly tax: QuoteTax;
  readonly rate: Figure<'ratio'>;
  readonly amounts: readonly Figure<'money'>[];
}

const money = (label: string, figures: readonly Figure<'money'>[], currency: Currency) =>
  sum(label, 'money', figures, currency);

function exclusive(tax: QuoteTax, rate: Figure<'ratio'>, net: Figure<'money'>) {
  const taxAmount = roundMoney(tax.name, scale(`${tax.name} on the net`, net, rate));
  const gross = sum(`with ${tax.name}`, 'money', [net, taxAmount]);
  return { net, taxAmount, gross, differenceFromNetRule: null };
}

function inclusive(tax: QuoteTax, rate: Figure<'ratio'>, gross: Figure<'money'>) {
  const held = divide(
    `${tax.name} held by the gross`,
    scale('gross x rate', gross, rate),
    increment('1 + rate', rate),
  );
  const taxAmount = roundMoney(tax.name, held);
  const net = difference(`without ${tax.name}`, gross, taxAmount);
  const byNetRule = roundMoney(`${tax.name} by the net rule`, scale('net x rate', net, rate));
  const differenceFromNetRule = difference(`${tax.name}: difference from the net rule`, taxAmount, byNetRule);
  return { net, taxAmount, gross, differenceFromNetRule };
}

function spread(discount: Figure<'money'>, groups: readonly TaxedLines[], sums: readonly Figure<'money'>[]) {
  const below = sums.findIndex(({ value }) => value.lt(0));
  if (below >= 0)
    throw new QuotingInputError(
      'discount',
      `cannot be spread: the lines under "${groups[below]?.tax.name}" come to ${sums[below]?.value}`,
      'take the discount off, or put the deduction under the tax of what it is taken from',
    );
  return shareOut(
    groups.map(({ tax }) => `discount on ${tax.name}`),
    discount,
    sums,
  );
}

/**
 * The totals of each rate of tax. Exclusive prices go in the order of EN 16931 (BR-CO-13, 17), inclusive ones fix the
 * gross and take the tax out of it; the discount is spread before tax either way. Rounds to the minor unit.
 * @throws QuotingInputError where the discount cannot be spread
 */
export function categoryTotals(
  groups: readonly TaxedLines[],
  discount: Figure<'money'>,
  context: { readonly currency: Currency; readonly priceMode: PriceMode },
): CategoryTotals[] {
  const { currency, priceMode } = context;
  const sums = groups.map(({ tax, amounts }) => money(`lines under ${tax.name}`, amounts, currency));
  const parts = discount.value.isZero()
    ? groups.map(({ tax }) => money(`discount on ${tax.name}`, [], currency))
    : spread(discount, groups, sums);
  return groups.map(({ tax, rate }, at) => {
    const lines = sums[at] ?? money('no lines', [], currency);
    const part = parts[at] ?? money('no discount', [], currency);
    const rest = part.value.isZero() ? lines : difference(`${tax.name}: lines less discount`, lines, part);
    const taxed = priceMode === 'exclusive' ? exclusive(tax, rate, rest) : inclusive(tax, rate, rest);
    return { tax, rate, lines, discount: part, ...taxed };
  });
}
