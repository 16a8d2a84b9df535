import { type Decimal, type DecimalLike, ZERO } from '@scantling/decimals';
import { allocate } from '../allocate.ts';
import type { Currency } from '../currency.ts';
import { fraction } from '../input-error.ts';

/** What decides the tax of a line: a category (EN 16931: S standard, Z zero, E exempt ...) and its rate. */
export interface TaxCategory {
  readonly category: string;
  /** Fraction: 19 % is 0.19. */
  readonly rate: DecimalLike;
}

/** An amount under one tax category. */
export interface CategorisedAmount extends TaxCategory {
  readonly amount: Decimal;
}

/** Adds up amounts per category and rate, in the order the categories first appear. @throws MoneyInputError */
export function byCategory(amounts: readonly CategorisedAmount[]): CategorisedAmount[] {
  const sums = new Map<string, CategorisedAmount>();
  for (const { category, rate, amount } of amounts) {
    const share = fraction('rate', rate);
    const key = `${category} ${share}`;
    sums.set(key, { category, rate: share, amount: (sums.get(key)?.amount ?? ZERO).plus(amount) });
  }
  return [...sums.values()];
}

/**
 * A discount spread over the tax categories in proportion to what they hold, before tax; the parts add up to it.
 * @param discount payable in the currency
 * @throws MoneyInputError when a category holds less than 0, or all hold nothing
 */
export function spreadDiscount(
  discount: DecimalLike,
  amounts: readonly CategorisedAmount[],
  currency: Currency,
): CategorisedAmount[] {
  const categories = byCategory(amounts);
  const shares = allocate(
    discount,
    categories.map(({ amount }) => amount),
    currency,
  );
  return categories.map((one, at) => ({ ...one, amount: shares[at] ?? ZERO }));
}
