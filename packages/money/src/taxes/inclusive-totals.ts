import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { roundToMinorUnit } from '../amount.ts';
import type { Currency } from '../currency.ts';
import { number } from '../input-error.ts';
import { total } from './exclusive-totals.ts';
import { byCategory, type CategorisedAmount, spreadDiscount, type TaxCategory } from './tax-category.ts';

export interface InclusiveLine extends TaxCategory {
  readonly quantity: DecimalLike;
  /** With tax. */
  readonly grossPrice: DecimalLike;
}

export interface InclusiveDocument {
  readonly currency: Currency;
  readonly lines: readonly InclusiveLine[];
  /** Off the whole document, with tax; spread over the categories before their tax is taken out. */
  readonly discount?: DecimalLike;
  /** Deposits and part payments, with tax. */
  readonly prepaid?: DecimalLike;
}

export interface InclusiveCategoryTax {
  readonly category: string;
  readonly rate: Decimal;
  /** Fixed: what the client was told. */
  readonly gross: Decimal;
  readonly net: Decimal;
  readonly tax: Decimal;
  /** Tax less what EN 16931's BR-CO-17 gives on the net: within one minor unit. */
  readonly differenceFromNetRule: Decimal;
}

export interface InclusiveTotals {
  readonly lineAmounts: readonly Decimal[];
  readonly discount: Decimal;
  readonly taxes: readonly InclusiveCategoryTax[];
  readonly taxExclusive: Decimal;
  readonly tax: Decimal;
  readonly taxInclusive: Decimal;
  readonly payable: Decimal;
}

/**
 * Totals of a document whose prices hold the tax: the gross is fixed per category, tax = round(gross x t / (1 + t)),
 * net = gross - tax. Rounds half away from zero to the minor unit. Common practice, no source; re-checked against
 * BR-CO-17 of EN 16931.
 * @throws MoneyInputError naming the field
 */
export function inclusiveTotals(document: InclusiveDocument): InclusiveTotals {
  const { currency, lines } = document;
  const round = (value: DecimalLike) => roundToMinorUnit(value, currency);
  const amounts: CategorisedAmount[] = lines.map(({ category, rate, quantity, grossPrice }, at) => {
    const price = number(`lines.${at}.grossPrice`, grossPrice);
    return { category, rate, amount: round(price.times(number(`lines.${at}.quantity`, quantity))) };
  });
  const discount = round(number('discount', document.discount ?? 0));
  const off = discount.isZero() ? [] : spreadDiscount(discount, amounts, currency);
  const reduced = byCategory([...amounts, ...off.map((one) => ({ ...one, amount: one.amount.neg() }))]);
  const taxes = reduced.map(({ category, rate: fraction, amount: gross }) => {
    const rate = decimal(fraction);
    const tax = round(gross.times(rate).div(rate.plus(1)));
    const net = gross.minus(tax);
    return { category, rate, gross, net, tax, differenceFromNetRule: tax.minus(round(net.times(rate))) };
  });
  const taxInclusive = total(taxes.map(({ gross }) => gross));
  return {
    lineAmounts: amounts.map(({ amount }) => amount),
    discount,
    taxes,
    taxExclusive: total(taxes.map(({ net }) => net)),
    tax: total(taxes.map(({ tax }) => tax)),
    taxInclusive,
    payable: taxInclusive.minus(round(number('prepaid', document.prepaid ?? 0))),
  };
}
