import { decimal } from '@scantling/decimals';
import { CuttingImpossibleError } from './cutting-errors.ts';
import type { Layout } from './cutting-plan.ts';
import type { ExactInstance } from './instance/exact-instance.ts';
import { MILLIONTHS } from './instance/exact-length.ts';
import type { LinearSolver } from './linear-solver.ts';
import { BestPlan } from './patterns/best-plan.ts';
import type { Pattern } from './patterns/pattern.ts';
import type { Preferences } from './preferences.ts';
import type { SearchLimits, SearchWatch } from './search-limits.ts';
import type { Generator } from './seeded-generator.ts';
import { chooseParts } from './sheets/choose-parts.ts';
import { planSheets } from './sheets/plan-sheets.ts';
import { type SheetPattern, sheetPattern } from './sheets/sheet.ts';
import { writeSheets } from './sheets/write-sheets.ts';
import { planSticks } from './sticks/plan-sticks.ts';
import { stickPattern } from './sticks/stick-pricer.ts';
import { writeSticks } from './sticks/write-sticks.ts';

export interface PlanningTools {
  readonly solver: LinearSolver;
  /** The same numbers give the same plan. */
  readonly random: Generator;
  readonly limits: SearchLimits;
}

export interface FoundLayouts {
  readonly layouts: Layout[];
  /** In steps of money, or of value with `max-value`. */
  readonly bound: number;
}

export function stepsToText(steps: number, step: number): string {
  return decimal(steps).times(step).div(MILLIONTHS).toDecimalPlaces(6).toFixed();
}

function nothingFound(isProven: boolean): CuttingImpossibleError {
  return new CuttingImpossibleError(
    'stock',
    isProven
      ? 'does not go round: no plan cuts all parts from what is available'
      : 'did not go round in any plan that was found',
    'Allow more pieces of a stock, or add a stock without a limit.',
  );
}

function startPlan<P extends Pattern>(instance: ExactInstance, preferences: Preferences, watch: SearchWatch) {
  const { priceOfKind, worthOf } = preferences;
  const write = (steps: number) => stepsToText(steps, instance.moneyStep);
  const hasWholeCosts = worthOf === null && Number.isInteger(priceOfKind);
  return new BestPlan<P>({ hasWholeCosts, priceOfKind, write }, watch);
}

type Find = (
  instance: ExactInstance,
  preferences: Preferences,
  tools: PlanningTools,
  watch: SearchWatch,
) => FoundLayouts;

const findSticks: Find = (instance, preferences, tools, watch) => {
  const { worthOf } = preferences;
  const best = startPlan<Pattern>(instance, preferences, watch);
  const worthOfRest =
    worthOf === null
      ? null
      : (stock: number, rest: number) => {
          const { usable, length } = instance.stocks[stock] ?? { usable: { length: 0 }, length: 0 };
          // The stock may be longer than the whole steps it holds; the rest includes the last cut.
          const left = usable.length - (length - rest) * instance.step;
          return left > 0 ? worthOf(left, MILLIONTHS) : 0;
        };
  const { isImpossible } = planSticks({ ...tools, instance, watch, best, worthOfRest });
  if (best.choice === null) throw nothingFound(isImpossible);
  return { layouts: writeSticks(instance, best.choice), bound: best.bound };
};

const findSheets: Find = (instance, preferences, tools, watch) => {
  const { worthOf } = preferences;
  const best = startPlan<SheetPattern>(instance, preferences, watch);
  const { step, kerf } = instance;
  const worth =
    worthOf === null
      ? null
      : (length: number, width: number) => worthOf(length * step - kerf, width * step - kerf);
  planSheets({ ...tools, instance, watch, best, worth });
  if (best.choice === null) throw nothingFound(false);
  return { layouts: writeSheets(instance, best.choice), bound: best.bound };
};

const findMostValue: Find = (instance, _preferences, tools, watch) => {
  const { sheets, bound } = chooseParts(instance, tools.random, watch);
  const patterns = sheets.map((sheet) => sheetPattern(instance, sheet, null));
  if (instance.isSheets)
    return {
      layouts: writeSheets(
        instance,
        patterns.map((pattern) => ({ pattern, count: 1 })),
      ),
      bound,
    };
  const choice = patterns.map(({ stock, parts, counts }) => {
    const held = new Uint16Array(instance.parts.length);
    parts.forEach((part, at) => {
      held[part] = counts[at] ?? 0;
    });
    return { pattern: stickPattern(instance, stock, held, null), count: 1 };
  });
  return { layouts: writeSticks(instance, choice), bound };
};

/** Finds the layouts of an instance by the search that is made for it. @throws CuttingImpossibleError */
export const findLayouts: Find = (instance, preferences, tools, watch) => {
  if (instance.isMaxValue) return findMostValue(instance, preferences, tools, watch);
  const find = instance.isSheets ? findSheets : findSticks;
  return find(instance, preferences, tools, watch);
};
