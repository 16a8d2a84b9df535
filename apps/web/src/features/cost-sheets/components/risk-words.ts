import { type Decimal, decimal } from '@scantling/decimals';
import type { FigureNode } from '@scantling/figures';
import { formatPercent } from '../../../lib/format.ts';

/** A share of runs as people count them: "8 in 10 runs", "3 in 100 runs", "1 in 1,000 runs". */
export function runsWords(share: string, locale: string): string {
  const value = decimal(share);
  if (value.isZero()) return 'none of the runs';
  if (value.gte(1)) return 'all of the runs';
  for (const size of [10, 100, 1000]) {
    const count = value.times(size);
    const whole = count.round();
    // Near enough to be said so: within a twentieth of it.
    if (!whole.isZero() && whole.lt(size) && count.minus(whole).abs().lte(whole.times('0.05')))
      return `${whole.toString()} in ${size.toLocaleString(locale)} runs`;
  }
  return value.lt('0.001')
    ? 'fewer than 1 in 1,000 runs'
    : `${formatPercent(share, 1, { locale, places: 1 })} of the runs`;
}

export interface RiskSentence {
  /** What is made: "Hall bench on turned legs". */
  readonly what: string;
  readonly isOne: boolean;
  /** The share of runs that is to be covered, and the cost that is not exceeded in it; as read. */
  readonly percentile: string;
  readonly cost: string;
  readonly price: string;
  /** Share of runs in which the cost is above the price; null where it cannot be said. */
  readonly ofLoss: string | null;
  readonly locale: string;
}

/** The answer in plain words first. */
export function riskWords({ what, isOne, percentile, cost, price, ofLoss, locale }: RiskSentence): string {
  const costs = isOne ? 'costs' : 'all pieces together cost';
  const first = `In ${runsWords(percentile, locale).replace(' in ', ' of ')} “${what}” ${costs} ${cost} or less.`;
  if (ofLoss === null) return first;
  const loss = decimal(ofLoss);
  if (loss.isZero()) return `${first} At a price of ${price} none of the runs makes a loss.`;
  return `${first} At a price of ${price}, ${runsWords(ofLoss, locale)} ${loss.gte(1) ? 'make' : 'would make'} a loss.`;
}

/**
 * The share of the cost that the sheet's terms have to add for the cost of production to come to a percentile:
 * contingency is added to all costs before it. Null where the percentile lies below them: nothing is to be added.
 */
export function contingencyShare(percentile: string, beforeContingency: Decimal): Decimal | null {
  const needed = decimal(percentile).minus(beforeContingency);
  if (needed.lte(0) || beforeContingency.lte(0)) return null;
  return needed.div(beforeContingency).toDecimalPlaces(12);
}

/** What the price leaves at one cost, as figures with their working. */
export function leftFigures(
  name: string,
  price: FigureNode,
  cost: FigureNode,
): { readonly left: FigureNode; readonly margin: FigureNode | null } {
  const value = decimal(price.value).minus(cost.value);
  const left: FigureNode = {
    id: `left/${name}`,
    label: `left of the price, ${cost.label}`,
    unit: 'money',
    currency: price.currency,
    value: value.toString(),
    how: { operation: 'difference', inputs: [price.id, cost.id] },
  };
  if (decimal(price.value).isZero()) return { left, margin: null };
  return {
    left,
    margin: {
      id: `left/${name}/margin`,
      label: `margin, ${cost.label}`,
      unit: 'ratio',
      currency: null,
      value: value.div(price.value).toString(),
      how: { operation: 'quotient', inputs: [left.id, price.id] },
    },
  };
}
