import type { ExactInstance } from '../instance/exact-instance.ts';
import type { SearchWatch } from '../search-limits.ts';
import type { Generator } from '../seeded-generator.ts';
import { StickKnapsack } from '../sticks/stick-knapsack.ts';
import { GuillotineValues } from './guillotine-values.ts';
import { RuinAndRecreate, type SheetState } from './ruin-and-recreate.ts';
import type { Sheet } from './sheet.ts';

export interface PartsChosen {
  readonly sheets: readonly Sheet[];
  /** In steps of value. */
  readonly value: number;
  /** No choice is worth more. */
  readonly bound: number;
}

const LOOKS = 400_000;
const GRID_WORK = 60_000_000;
const HISTORY = 200;

function worthCut({ parts }: ExactInstance, missing: readonly number[]): number {
  return parts.reduce((sum, { value, quantity }, part) => sum + value * (quantity - (missing[part] ?? 0)), 0);
}

/** What all stock together can hold at most: each piece at its most, and never more than all parts are worth. */
function boundOf(instance: ExactInstance): number {
  const { parts, stocks } = instance;
  const all = parts.reduce((sum, { value, quantity }) => sum + value * quantity, 0);
  const values = Float64Array.from(parts, ({ value }) => value);
  const longest = Math.max(...stocks.map(({ length }) => length));
  let mostOf: (stock: number) => number;
  if (instance.isSheets) {
    const layouts = new GuillotineValues(instance, GRID_WORK);
    layouts.setValues(values);
    mostOf = (stock) => layouts.most(stock);
  } else {
    const knapsack = new StickKnapsack(
      parts.map(({ length }) => length),
      longest,
    );
    knapsack.setValues(
      values,
      parts.map(({ quantity }) => quantity),
    );
    mostOf = (stock) => knapsack.fill(stocks[stock]?.length ?? 0, 0).most;
  }
  const held = stocks.reduce(
    (sum, { available }, stock) => sum + (available === 0 ? 0 : available * mostOf(stock)),
    0,
  );
  return Math.floor(Math.min(all, held) + 1e-6);
}

/**
 * The most valuable choice of parts from the stock there is: ruin and recreate with late acceptance on the value cut.
 * Sticks are sheets whose parts are all as wide as they are.
 */
export function chooseParts(instance: ExactInstance, random: Generator, watch: SearchWatch): PartsChosen {
  const remaking = new RuinAndRecreate(instance, random);
  const bound = boundOf(instance);
  const all = Number.POSITIVE_INFINITY;
  let state: SheetState = remaking.recreate([], [...remaking.nothing().missing], all);
  let value = worthCut(instance, state.missing);
  let [best, most] = [state, value];
  const history = Array.from({ length: HISTORY }, () => value);
  const end = LOOKS * watch.limits.effort;
  for (let step = 0; remaking.finder.looks < end && step < end && most < bound; step += 1) {
    if (step % 16 === 0 && watch.isUp()) break;
    const next = remaking.change(state, all);
    const changed = worthCut(instance, next.missing);
    const slot = step % HISTORY;
    if (changed >= value || changed >= (history[slot] ?? 0)) [state, value] = [next, changed];
    if (value > most) [best, most] = [state, value];
    history[slot] = value;
  }
  return {
    sheets: best.sheets.filter(({ root }) => root.way !== null || root.part >= 0),
    value: most,
    bound,
  };
}
