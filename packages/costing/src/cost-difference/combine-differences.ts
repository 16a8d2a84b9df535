import { decimal } from '@scantling/decimals';
import { type Currency, CurrencyMismatchError } from '@scantling/money';
import { type CostAndPrice, type CostChange, type CostDifference, inOrderOfSize } from './cost-difference.ts';

const plus = (one: CostAndPrice, other: CostAndPrice): CostAndPrice => ({
  cost: one.cost.plus(other.cost),
  price: one.price.plus(other.price),
});

/** A line of a sheet is one of that sheet; a leaf is the same in all of them. */
function nameIn(id: string, change: CostChange): CostChange {
  return change.kind === 'leaf' ? change : { ...change, key: `${id}/${change.key}` };
}

/**
 * Several differences as one: the lines of a quote that rest on sheets. A leaf that moved in several stands once, with all
 * that it moved.
 * @throws CurrencyMismatchError
 */
export function combineDifferences(
  parts: readonly { readonly id: string; readonly difference: CostDifference }[],
  currency: Currency,
): CostDifference {
  const nothing: CostAndPrice = { cost: decimal(0), price: decimal(0) };
  let [was, now] = [nothing, nothing];
  const changes = new Map<string, CostChange>();
  for (const { id, difference } of parts) {
    if (difference.currency !== currency)
      throw new CurrencyMismatchError(difference.currency, currency, 'cost of a line');
    was = plus(was, difference.was);
    now = plus(now, difference.now);
    for (const change of difference.changes.map((one) => nameIn(id, one))) {
      const name = `${change.cause} ${change.kind} ${change.key}`;
      const known = changes.get(name);
      changes.set(
        name,
        known === undefined ? change : { ...known, effect: plus(known.effect, change.effect) },
      );
    }
  }
  return { currency, was, now, changes: inOrderOfSize([...changes.values()]) };
}
