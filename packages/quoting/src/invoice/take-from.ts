import {
  difference,
  divide,
  type Figure,
  increment,
  named,
  roundMoney,
  scale,
  shareOut,
} from '@scantling/figures';
import { QuotingInputError } from '../input-error.ts';
import { rateOf, type TaxedAmount } from './taxed-amount.ts';

/** What is left of rows once others are taken off, tax by tax. */
export function restOf(
  label: string,
  whole: readonly TaxedAmount[],
  taken: readonly TaxedAmount[],
): TaxedAmount[] {
  return whole.map((row) => {
    const off = taken.find(({ key }) => key === row.key);
    if (off === undefined) return row;
    const name = `${label}, ${row.tax.name}`;
    return {
      ...row,
      net: difference(`${name}: without tax`, row.net, off.net),
      taxAmount: difference(`${name}: tax`, row.taxAmount, off.taxAmount),
      gross: difference(`${name}: with tax`, row.gross, off.gross),
    };
  });
}

/** The tax an amount holds: amount x rate / (1 + rate), rounded to the minor unit. */
function heldTax(label: string, row: TaxedAmount, gross: Figure<'money'>): Figure<'money'> {
  const rate = rateOf(row);
  const held = divide(
    `${label}: tax held`,
    scale(`${label}: with tax x rate`, gross, rate),
    increment('1 + rate', rate),
  );
  return roundMoney(`${label}: tax`, held);
}

/**
 * An amount with tax, spread over taxes in proportion to what is left under each, by largest remainder, with the tax
 * each part holds. Where it takes all that is left under a tax it takes exactly the tax that is left, so that all
 * amounts taken in turn add up to the whole, with and without tax.
 * @throws QuotingInputError naming `field` where it is not above 0 or more than what is left
 */
export function takeFrom(
  left: readonly TaxedAmount[],
  total: Figure<'money'>,
  amount: Figure<'money'>,
  { field, label }: { readonly field: string; readonly label: string },
): TaxedAmount[] {
  if (amount.value.lte(0))
    throw new QuotingInputError(field, `comes to ${amount.value}`, 'enter more than 0');
  if (amount.value.gt(total.value))
    throw new QuotingInputError(
      field,
      `comes to ${amount.value}, more than the ${total.value} that are left`,
      `enter at most ${total.value}`,
    );
  if (amount.value.eq(total.value)) return [...left];
  const from = left.filter(({ gross }) => gross.value.gt(0));
  const parts = shareOut(
    from.map(({ tax }) => `${label}, ${tax.name}`),
    amount,
    from.map(({ gross }) => gross),
  );
  return from.flatMap((row, at) => {
    const gross = parts[at];
    if (gross === undefined || gross.value.isZero()) return [];
    const name = `${label}, ${row.tax.name}`;
    if (gross.value.eq(row.gross.value)) return [row];
    const taxAmount = heldTax(name, row, gross);
    const net = difference(`${name}: without tax`, gross, taxAmount);
    return [{ ...row, gross: named(`${name}: with tax`, gross), taxAmount, net }];
  });
}
