import { type Decimal, type DecimalLike, decimal, ZERO } from '@scantling/decimals';
import { type MoneyRounding, roundToMinorUnit } from '../amount.ts';
import type { Currency } from '../currency.ts';
import { number, positive } from '../input-error.ts';
import { byCategory, type CategorisedAmount, type TaxCategory } from './tax-category.ts';

export interface ExclusiveLine extends TaxCategory {
  readonly quantity: DecimalLike;
  /** Without tax, after the price discount; may carry more places than the currency. */
  readonly netPrice: DecimalLike;
  /** How many the price is for; 1 when absent. */
  readonly priceBaseQuantity?: DecimalLike;
  readonly charge?: DecimalLike;
  readonly allowance?: DecimalLike;
}

/** An allowance (discount) or charge on the whole document, which belongs to one tax category. */
export interface DocumentAdjustment extends TaxCategory {
  readonly amount: DecimalLike;
}

export interface ExclusiveDocument {
  readonly currency: Currency;
  readonly lines: readonly ExclusiveLine[];
  readonly allowances?: readonly DocumentAdjustment[];
  readonly charges?: readonly DocumentAdjustment[];
  /** Deposits and part payments, with tax. */
  readonly prepaid?: DecimalLike;
  /** Half away from zero when absent; a document made otherwise can be reproduced. */
  readonly rounding?: MoneyRounding;
}

export interface CategoryTax {
  readonly category: string;
  readonly rate: Decimal;
  readonly taxable: Decimal;
  readonly tax: Decimal;
}

export interface DocumentTotals {
  readonly lineAmounts: readonly Decimal[];
  readonly sumOfLines: Decimal;
  readonly allowanceTotal: Decimal;
  readonly chargeTotal: Decimal;
  readonly taxExclusive: Decimal;
  readonly taxes: readonly CategoryTax[];
  readonly tax: Decimal;
  readonly taxInclusive: Decimal;
  readonly payable: Decimal;
}

type Round = (value: DecimalLike) => Decimal;

/** Adds what is rounded already, so the sum needs no rounding. */
export function total(values: readonly Decimal[]): Decimal {
  return values.reduce((sum, value) => sum.plus(value), ZERO);
}

// Peppol BIS Billing 3.0: the parts of a line are rounded each on its own.
function lineAmount(line: ExclusiveLine, at: number, round: Round): Decimal {
  const base = positive(`lines.${at}.priceBaseQuantity`, line.priceBaseQuantity ?? 1);
  const price = number(`lines.${at}.netPrice`, line.netPrice).times(
    number(`lines.${at}.quantity`, line.quantity),
  );
  const charge = number(`lines.${at}.charge`, line.charge ?? 0);
  return round(price.div(base))
    .plus(round(charge))
    .minus(round(number(`lines.${at}.allowance`, line.allowance ?? 0)));
}

function rounded(
  name: string,
  adjustments: readonly DocumentAdjustment[],
  round: Round,
): CategorisedAmount[] {
  return adjustments.map((one, at) => ({
    ...one,
    amount: round(number(`${name}.${at}.amount`, one.amount)),
  }));
}

/**
 * Totals of a document whose prices are without tax, in the order of EN 16931: lines rounded (BT-131), sums (BR-CO-10
 * to 13), tax per category on its rounded base (BR-CO-17), totals (BR-CO-14 to 16). Rounds to the minor unit.
 * @throws MoneyInputError naming the field
 */
export function exclusiveTotals(document: ExclusiveDocument): DocumentTotals {
  const { currency, lines, rounding } = document;
  const round: Round = (value) => roundToMinorUnit(value, currency, rounding);
  const lineAmounts = lines.map((line, at) => lineAmount(line, at, round));
  const allowances = rounded('allowances', document.allowances ?? [], round);
  const charges = rounded('charges', document.charges ?? [], round);
  const categories = byCategory([
    ...lines.map(({ category, rate }, at) => ({ category, rate, amount: lineAmounts[at] ?? ZERO })),
    ...allowances.map((one) => ({ ...one, amount: one.amount.neg() })),
    ...charges,
  ]);
  const taxes = categories.map(({ category, rate, amount: taxable }) => ({
    category,
    rate: decimal(rate),
    taxable,
    tax: round(taxable.times(rate)),
  }));
  const sumOfLines = total(lineAmounts);
  const allowanceTotal = total(allowances.map(({ amount }) => amount));
  const chargeTotal = total(charges.map(({ amount }) => amount));
  const taxExclusive = sumOfLines.minus(allowanceTotal).plus(chargeTotal);
  const tax = total(taxes.map((one) => one.tax));
  const taxInclusive = taxExclusive.plus(tax);
  const payable = taxInclusive.minus(round(number('prepaid', document.prepaid ?? 0)));
  return {
    lineAmounts,
    sumOfLines,
    allowanceTotal,
    chargeTotal,
    taxExclusive,
    taxes,
    tax,
    taxInclusive,
    payable,
  };
}
