import { type Decimal, type DecimalLike, decimal, NotADecimalError } from '@scantling/decimals';
import { divide, entered, type Figure, increment, input, named, roundMoney, scale } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { QuotingInputError } from '../input-error.ts';
import type { PriceMode, TotalsLine } from './totals-input.ts';

/** The text as a decimal. @throws QuotingInputError naming the field */
export function readDecimal(field: string, text: DecimalLike): Decimal {
  try {
    return decimal(text);
  } catch (error) {
    if (!(error instanceof NotADecimalError)) throw error;
    throw new QuotingInputError(field, `is "${error.text}"`, 'enter a number');
  }
}

export interface LineAmount {
  /** What one `priceBase` costs, with tax where the document's prices hold it. */
  readonly price: Figure<'money'>;
  /** Quantity x price / price base, rounded to the minor unit (EN 16931 BT-131). */
  readonly amount: Figure<'money'>;
}

/** @throws QuotingInputError naming the field of the line */
export function lineAmount(
  line: TotalsLine,
  rate: Figure<'ratio'>,
  place: { readonly at: number; readonly currency: Currency; readonly priceMode: PriceMode },
): LineAmount {
  const field = (name: string) => `lines.${place.at}.${name}`;
  const quantity = readDecimal(field('quantity'), line.quantity);
  const base = readDecimal(field('priceBase'), line.priceBase ?? '1');
  if (base.lte(0)) throw new QuotingInputError(field('priceBase'), `is ${base}`, 'enter a number above 0');
  const key = (name: string) => `line/${line.id}/${name}`;
  const leaf = (name: string, label: string, value: Decimal) =>
    input({ key: key(name), label: `${line.label}: ${label}`, unit: 'ratio', value, source: entered() });
  const stated = input({
    key: key('price'),
    label: `${line.label}: price`,
    unit: 'money',
    value: readDecimal(field('price'), line.price),
    currency: place.currency,
    source: line.source ?? entered(),
  });
  const price =
    line.isPriceWithoutTax && place.priceMode === 'inclusive'
      ? roundMoney(
          `${line.label}: price with tax`,
          scale(`${line.label}: price and its tax`, stated, increment('1 + rate of tax', rate)),
        )
      : stated;
  const times = scale(`${line.label}: quantity x price`, price, leaf('quantity', 'quantity', quantity));
  const whole = base.eq(1)
    ? times
    : divide(
        `${line.label}: quantity x price / number priced`,
        times,
        leaf('base', 'number the price is for', base),
      );
  return { price: named(`${line.label}: price`, price), amount: roundMoney(line.label, whole) };
}
