import { type Decimal, type DecimalLike, ONE } from '@scantling/decimals';
import { MoneyInputError, number } from './input-error.ts';

/** Margin = markup / (1 + markup); both fractions. Common practice, no source. @throws MoneyInputError */
export function marginFromMarkup(markup: DecimalLike): Decimal {
  const share = aboveMinusOne(markup);
  return share.div(share.plus(1));
}

/** Markup = margin / (1 - margin); both fractions. @throws MoneyInputError for a margin of 1 or more */
export function markupFromMargin(margin: DecimalLike): Decimal {
  const share = belowOne(margin);
  return share.div(ONE.minus(share));
}

/** Price = cost x (1 + markup). */
export function priceByMarkup(cost: DecimalLike, markup: DecimalLike): Decimal {
  return number('cost', cost).times(aboveMinusOne(markup).plus(1));
}

/** Price = cost / (1 - margin). */
export function priceByMargin(cost: DecimalLike, margin: DecimalLike): Decimal {
  return number('cost', cost).div(ONE.minus(belowOne(margin)));
}

function aboveMinusOne(markup: DecimalLike): Decimal {
  const share = number('markup', markup);
  if (share.lte(-1))
    throw new MoneyInputError('markup', `is ${share}`, 'enter a fraction above -1 (50 % is 0.5)');
  return share;
}

function belowOne(margin: DecimalLike): Decimal {
  const share = number('margin', margin);
  if (share.gte(1))
    throw new MoneyInputError('margin', `is ${share}`, 'enter a fraction below 1 (40 % is 0.4)');
  return share;
}
