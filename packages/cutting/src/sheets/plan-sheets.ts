import { choosePatterns } from '../patterns/choose-patterns.ts';
import { fewerKinds } from '../patterns/fewer-kinds.ts';
import { boundSheets } from './bound-sheets.ts';
import { GoalSearch } from './search-sheets.ts';
import { type Sheet, sheetPattern } from './sheet.ts';
import type { SheetPlanning } from './sheet-planning.ts';
import { SheetPool } from './sheet-pool.ts';
import { tidySheets } from './tidy-sheets.ts';

/** Places looked at per unit of effort. */
const LOOKS = 450_000;
const ROUNDS = 5;

/**
 * Sheets at the least cost: first plans, bounds, then in rounds the search by ruin and recreate and an integer program
 * over all sheets remembered, until the best plan is proven or the work is done.
 */
export function planSheets(planning: SheetPlanning): void {
  const { instance, solver, watch, best, worth } = planning;
  const quantities = instance.parts.map(({ quantity }) => quantity);
  const pool = new SheetPool();
  const offer = (sheets: readonly Sheet[]) => {
    const choice = pool.count(sheets.map((sheet) => sheetPattern(instance, sheet, worth)));
    best.offer(choice);
  };
  const searching = {
    ...{ instance, random: planning.random, watch, best, offer },
    keep: (sheets: readonly Sheet[]) =>
      pool.remember(sheets, (sheet) => sheetPattern(instance, sheet, worth)),
  };
  const search = new GoalSearch(searching);
  search.begin();
  for (const stocks of best.terms.priceOfKind > 0 ? fewerKinds(instance.stocks) : []) {
    if (watch.isUp(0.2)) break;
    new GoalSearch({ ...searching, instance: { ...instance, stocks } }).begin();
  }
  boundSheets(planning);
  const { effort } = watch.limits;
  const from = watch.shareUsed();
  for (let round = 1; round <= ROUNDS && !best.isProven() && !watch.isUp(); round += 1) {
    search.work((LOOKS * effort) / ROUNDS, from + (1 - from) * (round / ROUNDS - 0.05));
    if (best.isProven() || watch.isUp()) break;
    const { choice, endedBy } = choosePatterns({
      ...{ solver, pool: pool.patterns(), stocks: instance.stocks, quantities, start: null },
      nodes: Math.ceil(60 * Math.min(10, effort)),
      seconds: watch.secondsLeft() * (round === ROUNDS ? 0.8 : 0.07),
      gap: best.leastGap(),
      priceOfKind: best.terms.priceOfKind,
    });
    if (endedBy === 'clock') watch.isOutOfTime = true;
    if (choice !== null) best.offer(tidySheets(instance, choice, quantities, worth));
  }
}
