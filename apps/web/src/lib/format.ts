import { type DecimalLike, decimal, formatNumber, type NumberStyle } from '@scantling/decimals';
import { type Currency, formatMoney, formatRate } from '@scantling/money';
import { placesOf, type Unit, unitWords } from '@scantling/units';

// Screens find every way of writing a number here.
export { formatNumber, formatPercent, type NumberStyle as FormatOptions } from '@scantling/decimals';
export { formatMoney } from '@scantling/money';

/** What a figure needs to be written: the parts of a FigureNode that matter here. */
export interface Amount {
  readonly value: DecimalLike;
  readonly unit: Unit;
  readonly currency: Currency | null;
}

export interface WrittenAmount {
  /** The number as written, with the currency where it is money: "$1,245.50". */
  readonly number: string;
  /** The unit beside it, or '' ("bd ft", "per h"). */
  readonly unit: string;
  /** Both in one line, for text and speech. */
  readonly text: string;
}

/** A figure's value and unit as a maker reads them. @throws NotADecimalError */
export function formatAmount(amount: Amount, options: NumberStyle = {}): WrittenAmount {
  const value = decimal(amount.value);
  const unit = unitWords(amount.unit);
  const number =
    amount.currency === null
      ? formatNumber(value, placesOf(amount.unit), options)
      : amount.unit === 'money'
        ? formatMoney(value, amount.currency, options)
        : formatRate(value, amount.currency, options);
  return { number, unit, text: unit === '' ? number : `${number} ${unit}` };
}
