import { type Decimal, decimal } from '@scantling/decimals';
import { checkPlan, weighPlan } from './checker/check-plan.ts';
import { CuttingPlanRefusedError } from './cutting-errors.ts';
import type { CuttingPlan, SearchEnd } from './cutting-plan.ts';
import { type FoundLayouts, findLayouts, type PlanningTools, stepsToText } from './find-layouts.ts';
import type { CuttingInstance } from './instance/cutting-instance.ts';
import { readInstance } from './instance/exact-instance.ts';
import { readPreferences } from './preferences.ts';
import { SearchWatch } from './search-limits.ts';

/** The larger over the smaller less 1, six places; null where only the smaller is 0. */
function gapOf(larger: Decimal, smaller: Decimal): string | null {
  if (smaller.isZero()) return larger.isZero() ? '0' : null;
  return larger.div(smaller).minus(1).toDecimalPlaces(6).toFixed();
}

/** The bound as it stands beside the amount reached, and what of it is still open. */
function judged(reached: Decimal, bound: Decimal, isMaxValue: boolean) {
  // The search weighs offcuts with floats; a bound within that error of the plan is the plan's own amount.
  const isMet = isMaxValue ? bound.lte(reached) : bound.gt(reached.minus('0.000002'));
  const held = isMet ? reached : bound;
  return { held, isMet, gap: isMaxValue ? gapOf(held, reached) : gapOf(reached, held) };
}

function worthCut({ parts }: CuttingInstance, { layouts }: FoundLayouts): Decimal {
  const worth = new Map(parts.map(({ id, value = 0 }) => [id, decimal(value)]));
  return layouts.reduce(
    (sum, { cuts, count }) =>
      cuts.reduce((all, { part }) => all.plus(decimal(worth.get(part) ?? 0).times(count)), sum),
    decimal(0),
  );
}

/**
 * Plans the cutting of an instance. The search is bounded by work counted, so that the same instance, effort and
 * generator give the same plan wherever the plan does not say that the clock ended it. Every plan is checked, by code
 * that did not make it, before it is given.
 * @throws CuttingInputError, CuttingImpossibleError, CuttingCancelledError; CuttingPlanRefusedError is a fault of ours
 */
export function planCutting(instance: CuttingInstance, tools: PlanningTools): CuttingPlan {
  const exact = readInstance(instance);
  const preferences = readPreferences(instance, exact);
  const watch = new SearchWatch(tools.limits);
  const found = findLayouts(exact, preferences, tools, watch);
  const { cost, weighed } = weighPlan(instance, found.layouts);
  const value = worthCut(instance, found);
  const reached = exact.isMaxValue ? value : instance.preferences === undefined ? cost : weighed;
  const bound = decimal(stepsToText(found.bound, exact.isMaxValue ? exact.valueStep : exact.moneyStep));
  const { held, isMet, gap } = judged(reached, bound, exact.isMaxValue);
  const endedBy: SearchEnd = isMet ? 'proof' : watch.isOutOfTime ? 'clock' : 'work';
  const plan: CuttingPlan = {
    status: isMet ? 'optimal' : 'feasible',
    cost: cost.toFixed(),
    ...(exact.isMaxValue ? { value: value.toFixed() } : {}),
    bound: held.toFixed(),
    gap,
    ...(instance.preferences === undefined ? {} : { weighed: weighed.toFixed() }),
    endedBy,
    layouts: found.layouts,
  };
  const faults = checkPlan(instance, plan);
  if (faults.length > 0) throw new CuttingPlanRefusedError(faults);
  return plan;
}
