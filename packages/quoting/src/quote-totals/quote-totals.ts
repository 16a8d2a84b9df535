import { type Decimal, ZERO } from '@scantling/decimals';
import { difference, entered, type Figure, input, roundMoney, scale, sum } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { QuotingInputError } from '../input-error.ts';
import { type CategoryTotals, categoryTotals } from './category-totals.ts';
import { countedLines } from './counted-lines.ts';
import { type LineAmount, lineAmount, readDecimal } from './line-amount.ts';
import { type ScheduledAmount, scheduledAmounts } from './scheduled-amounts.ts';
import type { Discount, QuoteTotalsInput, TotalsLine } from './totals-input.ts';

export interface TotalledLine extends LineAmount {
  readonly line: TotalsLine;
  readonly rate: Figure<'ratio'>;
  /** Whether it counts with what is chosen; the amount of the others is what they would cost. */
  readonly isCounted: boolean;
}

export interface QuoteTotals {
  readonly lines: readonly TotalledLine[];
  readonly sumOfLines: Figure<'money'>;
  /** 0 or more. */
  readonly discount: Figure<'money'>;
  /** One a rate of tax that a counted line falls under, in the order of the taxes given. */
  readonly categories: readonly CategoryTotals[];
  readonly net: Figure<'money'>;
  readonly tax: Figure<'money'>;
  /** With tax. */
  readonly total: Figure<'money'>;
  readonly schedule: readonly ScheduledAmount[];
}

function rateFigures(taxes: QuoteTotalsInput['taxes']): Map<string, Figure<'ratio'>> {
  const rates = new Map<string, Figure<'ratio'>>();
  taxes.forEach(({ id, rate, name }, at) => {
    if (rates.has(id))
      throw new QuotingInputError(`taxes.${at}.id`, `is "${id}" again`, 'give each tax an id of its own');
    const value = readDecimal(`taxes.${at}.rate`, rate);
    if (value.lt(0) || value.gt(1))
      throw new QuotingInputError(
        `taxes.${at}.rate`,
        `is ${value}`,
        'enter a rate from 0 to 1 (20 % is 0.2)',
      );
    rates.set(
      id,
      input({ key: `tax/${id}/rate`, label: `${name}: rate`, unit: 'ratio', value, source: entered() }),
    );
  });
  return rates;
}

function requireDiscount(field: string, value: Decimal, most: Decimal, mend: string): void {
  if (value.lt(0) || value.gt(most)) throw new QuotingInputError(field, `is ${value}`, mend);
}

function discountOn(lines: Figure<'money'>, discount: Discount | null, currency: Currency): Figure<'money'> {
  if (discount === null) return sum('no discount', 'money', [], currency);
  if (discount.kind === 'share') {
    const value = readDecimal('discount.share', discount.share);
    requireDiscount('discount.share', value, ZERO.plus(1), 'enter a share from 0 to 1 (5 % is 0.05)');
    const share = input({
      key: 'discount/share',
      label: 'discount, share of the lines',
      unit: 'ratio',
      value,
      source: entered(),
    });
    return roundMoney('discount', scale('discount before rounding', lines, share));
  }
  const value = readDecimal('discount.amount', discount.amount);
  const most = lines.value.gt(0) ? lines.value : ZERO;
  requireDiscount(
    'discount.amount',
    value,
    most,
    `enter an amount from 0 to ${most}, what the lines come to`,
  );
  const amount = input({
    key: 'discount/amount',
    label: 'discount entered',
    unit: 'money',
    value,
    currency,
    source: entered(),
  });
  return roundMoney('discount', amount);
}

function totalled(given: QuoteTotalsInput, rates: ReadonlyMap<string, Figure<'ratio'>>): TotalledLine[] {
  const counted = countedLines(given);
  return given.lines.map((line, at) => {
    const rate = rates.get(line.tax);
    if (rate === undefined)
      throw new QuotingInputError(`lines.${at}.tax`, `names no tax ("${line.tax}")`, 'use one of the taxes');
    const amounts = lineAmount(line, rate, { at, currency: given.currency, priceMode: given.priceMode });
    return { line, rate, isCounted: counted.has(line.id), ...amounts };
  });
}

/**
 * What a quote comes to with the options and alternates chosen: lines, discount, tax by rate, total, and the parts it
 * is paid in. The order of the lines does not matter. Lines, discount, taxes and parts are rounded half away from zero
 * to the minor unit, in that order; nothing else is.
 * @throws QuotingInputError naming the field of the input and the mend
 */
export function quoteTotals(given: QuoteTotalsInput): QuoteTotals {
  const { currency, priceMode, taxes } = given;
  const rates = rateFigures(taxes);
  const lines = totalled(given, rates);
  const counted = lines.filter(({ isCounted }) => isCounted);
  const amountsOf = (of: readonly TotalledLine[]) => of.map(({ amount }) => amount);
  const sumOfLines = sum('sum of the lines', 'money', amountsOf(counted), currency);
  const discount = discountOn(sumOfLines, given.discount, currency);
  const groups = taxes.flatMap((tax) => {
    const rate = rates.get(tax.id);
    const under = counted.filter(({ line }) => line.tax === tax.id);
    return rate === undefined || under.length === 0 ? [] : [{ tax, rate, amounts: amountsOf(under) }];
  });
  const categories = categoryTotals(groups, discount, { currency, priceMode });
  const taxLabel = priceMode === 'exclusive' ? 'tax' : 'tax included';
  const tax = sum(
    taxLabel,
    'money',
    categories.map(({ taxAmount }) => taxAmount),
    currency,
  );
  const exclusive = priceMode === 'exclusive';
  const rest = difference(exclusive ? 'total without tax' : 'total', sumOfLines, discount);
  const net = exclusive ? rest : difference('total without tax', rest, tax);
  const total = exclusive ? sum('total', 'money', [net, tax]) : rest;
  return {
    lines,
    sumOfLines,
    discount,
    categories,
    net,
    tax,
    total,
    schedule: scheduledAmounts(given.schedule, total),
  };
}
