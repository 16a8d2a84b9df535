import type { CostDifferenceAnswer } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';

type Cause = CostDifferenceAnswer['causes'][number];

/** The causes with the one that moves the cost most first, up or down; those that move the same stay as they came. */
export function causesBySize(causes: readonly Cause[], moneyOf: (id: string) => string): Cause[] {
  const size = ({ effect }: Cause) => decimal(moneyOf(effect.cost)).abs();
  return [...causes].sort((one, other) => size(other).comparedTo(size(one)));
}
