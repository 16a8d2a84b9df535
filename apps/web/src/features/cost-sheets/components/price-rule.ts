import type { SheetResultName } from '@scantling/contracts';
import type { PricePolicy } from '@scantling/costing';

const FOLLOWS: Partial<Record<PricePolicy['kind'], string>> = {
  markup: 'a markup on the cost',
  'markup-by-class': 'markups on the classes of cost',
  margin: 'a set margin',
  'hourly-earnings': 'what your hour is to bring',
};

const LEFT_OVER: readonly SheetResultName[] = ['margin', 'hourlyEarnings'];

/**
 * Why what the price leaves hardly moves on this sheet: a price that follows the cost makes up for whatever moves.
 * Null where the price stands by itself, and for other results.
 */
export function priceFollowsWords(policy: PricePolicy, result: SheetResultName): string | null {
  const how = FOLLOWS[policy.kind];
  if (how === undefined || !LEFT_OVER.includes(result)) return null;
  return `The price of this sheet follows its cost by ${how}: when something costs more, the price rises with it, so little happens to what it leaves. Once a price stands, every rise of the cost comes out of it; ask about the cost of production, or enter the price in the terms.`;
}
