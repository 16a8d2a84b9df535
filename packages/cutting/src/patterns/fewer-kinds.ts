import type { ExactStock } from '../instance/exact-instance.ts';

/**
 * Stock lists to try where another kind of stock has a price: each kind alone, and all but one. The kinds left out
 * have none available, so that indices stay.
 */
export function fewerKinds(stocks: readonly ExactStock[]): ExactStock[][] {
  const only = (isKept: (index: number) => boolean) =>
    stocks.map((stock, index) => (isKept(index) ? stock : { ...stock, available: 0 }));
  const alone = stocks.map((_, kept) => only((index) => index === kept));
  const butOne = stocks.length < 3 ? [] : stocks.map((_, left) => only((index) => index !== left));
  return [...alone, ...butOne];
}
