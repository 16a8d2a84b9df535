import { type Decimal, type DecimalLike, decimal, sumOf, ZERO } from '@scantling/decimals';
import type { CuttingPlan, Layout, Offcut } from '../cutting-plan.ts';
import type { CuttingInstance } from '../instance/cutting-instance.ts';
import { checkLayout } from './check-layout.ts';

function cutIn(layouts: readonly Layout[], part: string): number {
  return layouts.reduce(
    (sum, layout) => sum + layout.count * layout.cuts.filter((cut) => cut.part === part).length,
    0,
  );
}

function checkDemand({ parts, objective }: CuttingInstance, { layouts }: CuttingPlan): string[] {
  return parts.flatMap(({ id, quantity }) => {
    const cut = cutIn(layouts, id);
    if (objective === 'max-value')
      return cut > quantity ? [`${cut} of "${id}" are cut, ${quantity} at most wanted`] : [];
    return cut === quantity ? [] : [`${cut} of "${id}" are cut, ${quantity} wanted`];
  });
}

function checkStock({ stock }: CuttingInstance, { layouts }: CuttingPlan): string[] {
  return stock.flatMap(({ id, available = Number.POSITIVE_INFINITY }) => {
    const used = layouts.reduce((sum, layout) => sum + (layout.stock === id ? layout.count : 0), 0);
    return used > available ? [`${used} of "${id}" are used, ${available} available`] : [];
  });
}

function isWorth(offcut: Offcut, instance: CuttingInstance): Decimal {
  const { leastLength, leastWidth, worth } = instance.preferences?.usableOffcuts ?? {};
  if (leastLength === undefined || worth === undefined) return ZERO;
  const length = decimal(offcut.length);
  if (instance.kind === '1d') return length.gte(decimal(leastLength)) ? length.times(decimal(worth)) : ZERO;
  const width = decimal(offcut.width ?? 0);
  const reaches = (a: Decimal, b: Decimal) => a.gte(decimal(leastLength)) && b.gte(decimal(leastWidth ?? 0));
  return reaches(length, width) || reaches(width, length) ? length.times(width).times(decimal(worth)) : ZERO;
}

/** Cost + price of kinds of stock - worth of offcuts, from the layouts alone. */
export function weighPlan(
  instance: CuttingInstance,
  layouts: readonly Layout[],
): { cost: Decimal; weighed: Decimal } {
  const costOf = new Map(instance.stock.map(({ id, cost }) => [id, decimal(cost)]));
  const cost = sumOf(layouts.map(({ stock, count }) => (costOf.get(stock) ?? ZERO).times(count)));
  const kinds = new Set(layouts.map(({ stock }) => stock)).size;
  const kindsPrice = decimal(instance.preferences?.pricePerKindOfStock ?? 0).times(kinds);
  const offcuts = sumOf(
    layouts.map(({ count, offcuts: left }) => sumOf(left.map((one) => isWorth(one, instance))).times(count)),
  );
  return { cost, weighed: cost.plus(kindsPrice).minus(offcuts) };
}

function differs(said: DecimalLike, worked: Decimal): boolean {
  try {
    return !decimal(said).eq(worked);
  } catch {
    return true;
  }
}

function checkMoney(instance: CuttingInstance, plan: CuttingPlan): string[] {
  const { cost, weighed } = weighPlan(instance, plan.layouts);
  const faults = differs(plan.cost, cost)
    ? [`it says it costs ${plan.cost}, its stock costs ${cost.toString()}`]
    : [];
  if (instance.preferences !== undefined && differs(plan.weighed ?? '', weighed))
    faults.push(`it says it weighs ${plan.weighed}, it weighs ${weighed.toString()}`);
  if (instance.objective === 'max-value') {
    const value = sumOf(
      instance.parts.map((part) => decimal(part.value ?? 0).times(cutIn(plan.layouts, part.id))),
    );
    if (differs(plan.value ?? '', value))
      faults.push(`it says it is worth ${plan.value}, its parts are worth ${value}`);
    if (value.gt(decimal(plan.bound))) faults.push(`it is worth more than its bound of ${plan.bound}`);
    if (plan.status === 'optimal' && differs(plan.bound, value))
      faults.push('it calls itself optimal above a gap');
    return faults;
  }
  const counted = instance.preferences === undefined ? cost : weighed;
  if (counted.lt(decimal(plan.bound))) faults.push(`it costs less than its bound of ${plan.bound}`);
  if (plan.status === 'optimal' && differs(plan.bound, counted))
    faults.push('it calls itself optimal above a gap');
  return faults;
}

/**
 * Checks a plan against its instance from the ground up, with nothing of what made it: demand, stock, every layout's
 * places, kerfs, cuts and offcuts, and its money.
 * @returns what is wrong, in words; nothing where the plan holds
 */
export function checkPlan(instance: CuttingInstance, plan: CuttingPlan): string[] {
  return [
    ...checkDemand(instance, plan),
    ...checkStock(instance, plan),
    ...plan.layouts.flatMap((layout, index) =>
      checkLayout(instance, layout).map((fault) => `layout ${index + 1}: ${fault}`),
    ),
    ...checkMoney(instance, plan),
  ];
}
