import type { DecimalLike } from '@scantling/decimals';
import { type Currency, CurrencyMismatchError, minorUnits } from '@scantling/money';
import { type BaseUnit, isMoneyUnit, type Unit } from '@scantling/units';
import type { Figure } from './figure.ts';
import { constant } from './input.ts';
import { OPERATIONS, type OperationName } from './operations/index.ts';

/** The one currency among the figures, or null; two are an error. */
function commonCurrency(label: string, figures: readonly Figure[]): Currency | null {
  let found: Currency | null = null;
  for (const { currency } of figures) {
    if (currency === null) continue;
    if (found !== null && found !== currency) throw new CurrencyMismatchError(found, currency, label);
    found = currency;
  }
  return found;
}

const NO_SETTINGS = {};

/**
 * Any operation under a unit the caller states: for formulas whose units the type system cannot follow
 * (length x width = area). Prefer the typed functions below.
 * @throws CurrencyMismatchError when two currencies meet, NoAnswerError for 0 divisors and the like
 */
export function derive<U extends Unit>(
  label: string,
  unit: U,
  kind: OperationName,
  inputs: readonly Figure[],
  settings?: Readonly<Record<string, string>>,
): Figure<U> {
  const currency = commonCurrency(label, inputs);
  const value = OPERATIONS[kind].evaluate(
    inputs.map((figure) => figure.value),
    settings ?? NO_SETTINGS,
  );
  return {
    label,
    unit,
    currency: isMoneyUnit(unit) ? currency : null,
    value,
    how: settings === undefined ? { kind, inputs } : { kind, inputs, settings },
  };
}

/** The figures added. An empty list has no unit of its own, so the caller names one (and a currency for money). */
export function sum<U extends Unit>(
  label: string,
  unit: U,
  figures: readonly Figure<NoInfer<U>>[],
  currency?: Currency,
): Figure<U> {
  const total = derive(label, unit, 'sum', figures);
  return isMoneyUnit(unit) && total.currency === null && currency ? { ...total, currency } : total;
}

/** a - b. */
export function difference<U extends Unit>(label: string, a: Figure<U>, b: Figure<NoInfer<U>>): Figure<U> {
  return derive(label, a.unit, 'difference', [a, b]);
}

/** A rate times what it is per: money/h x h = money. */
export function times<A extends BaseUnit, B extends BaseUnit>(
  label: string,
  rate: Figure<`${A}/${B}`>,
  quantity: Figure<B>,
): Figure<A> {
  const unit = (rate.unit as string).slice(0, -(quantity.unit.length + 1)) as A;
  return derive(label, unit, 'product', [rate, quantity]);
}

/** A figure times pure numbers. */
export function scale<U extends Unit>(
  label: string,
  figure: Figure<U>,
  ...factors: readonly Figure<'ratio'>[]
): Figure<U> {
  return derive(label, figure.unit, 'product', [figure, ...factors]);
}

/** One figure per another: money per h. */
export function per<A extends BaseUnit, B extends BaseUnit>(
  label: string,
  a: Figure<A>,
  b: Figure<B>,
): Figure<`${A}/${B}`> {
  return derive(label, `${a.unit}/${b.unit}` as `${A}/${B}`, 'quotient', [a, b]);
}

/** A figure divided by a pure number (a yield, 1 - waste). */
export function divide<U extends Unit>(label: string, a: Figure<U>, b: Figure<'ratio'>): Figure<U> {
  return derive(label, a.unit, 'quotient', [a, b]);
}

/** The part one figure is of another, as a pure number. */
export function share<U extends Unit>(
  label: string,
  part: Figure<U>,
  whole: Figure<NoInfer<U>>,
): Figure<'ratio'> {
  return derive(label, 'ratio', 'quotient', [part, whole]);
}

/** The least of figures of one unit. */
export function least<U extends Unit>(
  label: string,
  first: Figure<U>,
  ...more: readonly Figure<NoInfer<U>>[]
): Figure<U> {
  return derive(label, first.unit, 'least', [first, ...more]);
}

/** The greatest of figures of one unit. */
export function greatest<U extends Unit>(
  label: string,
  first: Figure<U>,
  ...more: readonly Figure<NoInfer<U>>[]
): Figure<U> {
  return derive(label, first.unit, 'greatest', [first, ...more]);
}

/** The least multiple of `step` that covers the figure: whole packs, boards, sheets. */
export function roundUp<U extends Unit>(
  label: string,
  figure: Figure<U>,
  step: Figure<NoInfer<U>>,
): Figure<U> {
  return derive(label, figure.unit, 'round-up', [figure, step]);
}

/** The greatest multiple of `step` within the figure. */
export function roundDown<U extends Unit>(
  label: string,
  figure: Figure<U>,
  step: Figure<NoInfer<U>>,
): Figure<U> {
  return derive(label, figure.unit, 'round-down', [figure, step]);
}

/** Half away from zero to decimal places; one of the named places where rounding happens. */
export function round<U extends Unit>(label: string, figure: Figure<U>, places: number): Figure<U> {
  return derive(label, figure.unit, 'round', [figure], { places: String(places) });
}

/** Half away from zero to the currency's minor unit; one of the named places where rounding happens. */
export function roundMoney(label: string, figure: Figure<'money'>): Figure<'money'> {
  return round(label, figure, figure.currency === null ? 2 : minorUnits(figure.currency));
}

/** `reached` once `value` >= `bound`, else `below`. */
export function choose<U extends Unit, V extends Unit>(
  label: string,
  value: Figure<V>,
  bound: Figure<NoInfer<V>>,
  reached: Figure<U>,
  below: Figure<NoInfer<U>>,
): Figure<U> {
  return derive(label, reached.unit, 'choose', [value, bound, reached, below]);
}

/** The same value under another label. */
export function named<U extends Unit>(label: string, figure: Figure<U>, note?: string): Figure<U> {
  const made = derive(label, figure.unit, 'same', [figure]);
  return note === undefined ? made : { ...made, note };
}

/** A pure number by definition. */
export function number(value: DecimalLike, label = String(value)): Figure<'ratio'> {
  return constant(label, 'ratio', value);
}

/** 1 - x, for waste, discounts and margins given as shares. */
export function complement(label: string, x: Figure<'ratio'>): Figure<'ratio'> {
  return difference(label, number(1), x);
}

/** 1 + x, for burdens and markups given as shares. */
export function increment(label: string, x: Figure<'ratio'>): Figure<'ratio'> {
  return sum(label, 'ratio', [number(1), x]);
}

/** An amount in another currency, at a rate of that currency for one of the amount's own. */
export function exchange<U extends Unit>(
  label: string,
  amount: Figure<U>,
  rate: Figure<'ratio'>,
  to: Currency,
): Figure<U> {
  return { ...scale(label, amount, rate), currency: to };
}

/**
 * An amount shared out by weights in its currency's minor unit, so that the shares add up to it exactly; one of the
 * named places where rounding happens.
 * @param labels one a weight
 * @throws MoneyInputError where the amount is not payable, a weight is below 0 or all are 0
 */
export function shareOut(
  labels: readonly string[],
  amount: Figure<'money'>,
  weights: readonly Figure[],
): Figure<'money'>[] {
  const { currency } = amount;
  if (currency === null) throw new RangeError('an amount to share out has a currency');
  return labels.map((label, at) =>
    derive(label, 'money', 'allocate', [amount, ...weights], { share: String(at), currency }),
  );
}
