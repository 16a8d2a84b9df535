import { type Decimal, decimal } from '@scantling/decimals';
import { checkPlan, weighPlan } from './checker/check-plan.ts';
import { CuttingImpossibleError, CuttingPlanRefusedError } from './cutting-errors.ts';
import type { CuttingPlan, Layout, SearchEnd } from './cutting-plan.ts';
import type { CuttingInstance } from './instance/cutting-instance.ts';
import { type ExactInstance, readInstance } from './instance/exact-instance.ts';
import { MILLIONTHS } from './instance/exact-length.ts';
import type { LinearSolver } from './linear-solver.ts';
import { BestPlan } from './patterns/best-plan.ts';
import type { Pattern } from './patterns/pattern.ts';
import { type Preferences, readPreferences } from './preferences.ts';
import { type SearchLimits, SearchWatch } from './search-limits.ts';
import type { Generator } from './seeded-generator.ts';
import { planSheets } from './sheets/plan-sheets.ts';
import type { SheetPattern } from './sheets/sheet.ts';
import { writeSheets } from './sheets/write-sheets.ts';
import { planSticks } from './sticks/plan-sticks.ts';
import { writeSticks } from './sticks/write-sticks.ts';

export interface PlanningTools {
  readonly solver: LinearSolver;
  /** The same numbers give the same plan. */
  readonly random: Generator;
  readonly limits: SearchLimits;
}

interface Found {
  readonly layouts: Layout[];
  /** In steps of money, or of value with `max-value`. */
  readonly bound: number;
}

const nothingFits = (isProven: boolean) =>
  new CuttingImpossibleError(
    'stock',
    isProven
      ? 'does not go round: no plan cuts all parts from what is available'
      : 'did not go round in any plan that was found',
    'Allow more pieces of a stock, or add a stock without a limit.',
  );

function hasWholeCosts({ priceOfKind, worthOf }: Preferences): boolean {
  return worthOf === null && Number.isInteger(priceOfKind);
}

function stepsToText(steps: number, moneyStep: number): string {
  return decimal(steps).times(moneyStep).div(MILLIONTHS).toDecimalPlaces(6).toFixed();
}

function findSticks(
  instance: ExactInstance,
  preferences: Preferences,
  tools: PlanningTools,
  watch: SearchWatch,
): Found {
  const { worthOf } = preferences;
  const best = new BestPlan<Pattern>(
    {
      hasWholeCosts: hasWholeCosts(preferences),
      priceOfKind: preferences.priceOfKind,
      write: (steps) => stepsToText(steps, instance.moneyStep),
    },
    watch,
  );
  const worthOfRest =
    worthOf === null
      ? null
      : (stock: number, rest: number) => {
          const { usable, length } = instance.stocks[stock] ?? { usable: { length: 0 }, length: 0 };
          const beyond = usable.length + instance.kerf - length * instance.step;
          return worthOf(Math.max(0, rest * instance.step + beyond - instance.kerf), MILLIONTHS);
        };
  const { isImpossible } = planSticks({ ...tools, instance, watch, best, worthOfRest });
  if (best.choice === null) throw nothingFits(isImpossible);
  return { layouts: writeSticks(instance, best.choice), bound: best.bound };
}

function findSheets(instance: ExactInstance, preferences: Preferences, tools: PlanningTools, watch: SearchWatch): Found {
  const { worthOf, priceOfKind } = preferences;
  const best = new BestPlan<SheetPattern>(
    {
      hasWholeCosts: hasWholeCosts(preferences),
      priceOfKind,
      write: (steps) => stepsToText(steps, instance.moneyStep),
    },
    watch,
  );
  const { step, kerf } = instance;
  const worth =
    worthOf === null
      ? null
      : (length: number, width: number) => worthOf(length * step - kerf, width * step - kerf);
  planSheets({ ...tools, instance, watch, best, worth });
  if (best.choice === null) throw nothingFits(false);
  return { layouts: writeSheets(instance, best.choice), bound: best.bound };
}

/** Cost over bound less 1, six places; null where only the bound is 0. */
function gapOf(cost: Decimal, bound: Decimal): string | null {
  if (bound.isZero()) return cost.isZero() ? '0' : null;
  return cost.div(bound).minus(1).toDecimalPlaces(6).toFixed();
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
  const find = exact.isSheets ? findSheets : findSticks;
  const found = find(exact, preferences, tools, watch);
  const { cost, weighed } = weighPlan(instance, found.layouts);
  const counted = instance.preferences === undefined ? cost : weighed;
  const bound = decimal(stepsToText(found.bound, exact.moneyStep));
  // The search weighs offcuts with floats; a bound within that error of the plan is the plan's own cost.
  const held = bound.gt(counted.minus('0.000002')) ? counted : bound;
  const isOptimal = held.eq(counted);
  const endedBy: SearchEnd = isOptimal ? 'proof' : watch.isOutOfTime ? 'clock' : 'work';
  const plan: CuttingPlan = {
    status: isOptimal ? 'optimal' : 'feasible',
    cost: cost.toFixed(),
    bound: held.toFixed(),
    gap: gapOf(counted, held),
    ...(instance.preferences === undefined ? {} : { weighed: weighed.toFixed() }),
    endedBy,
    layouts: found.layouts,
  };
  const faults = checkPlan(instance, plan);
  if (faults.length > 0) throw new CuttingPlanRefusedError(faults);
  return plan;
}
