import type { ExactInstance } from '../instance/exact-instance.ts';
import type { BestPlan } from '../patterns/best-plan.ts';
import type { SearchWatch } from '../search-limits.ts';
import type { Generator } from '../seeded-generator.ts';
import { RuinAndRecreate, type SheetState } from './ruin-and-recreate.ts';
import type { Sheet, SheetPattern } from './sheet.ts';

export interface SheetSearch {
  readonly instance: ExactInstance;
  readonly random: Generator;
  readonly watch: SearchWatch;
  readonly best: BestPlan<SheetPattern>;
  /** Takes a plan that places everything. */
  readonly offer: (sheets: readonly Sheet[]) => void;
  /** Takes sheets worth remembering. */
  readonly keep: (sheets: readonly Sheet[]) => void;
}

const HISTORY = 60;
const FIRST_TRIES = 12;

/** How much is missing: large parts count more than their area, since they are hard to place. */
function missingOf({ parts }: ExactInstance, missing: readonly number[]): number {
  return missing.reduce((sum, count, part) => {
    const { length = 0, width = 0 } = parts[part] ?? {};
    const area = length * width;
    return count === 0 ? sum : sum + count * area * Math.sqrt(Math.sqrt(area));
  }, 0);
}

/**
 * Searches plans of sheets goal by goal: everything must be placed for less than the best plan costs; what is missing
 * on the way is made less by ruin and recreate with late acceptance.
 */
export class GoalSearch {
  private readonly remaking: RuinAndRecreate;
  private state: SheetState;
  private missing: number;
  private history: number[] = [];
  private step = 0;
  private idle = 0;

  constructor(private readonly search: SheetSearch) {
    this.remaking = new RuinAndRecreate(search.instance, search.random);
    this.state = this.remaking.nothing();
    this.missing = Number.POSITIVE_INFINITY;
  }

  /** The work done so far: places looked at, and a little for every step, so that it always ends. */
  private get done(): number {
    return this.remaking.finder.looks + 10 * this.step;
  }

  /** First plans without a goal. */
  begin(): void {
    const { instance, watch } = this.search;
    let [chosen, least]: [SheetState | null, number] = [null, Number.POSITIVE_INFINITY];
    for (let attempt = 0; attempt < FIRST_TRIES && !watch.isUp(); attempt += 1) {
      const nothing = this.remaking.nothing();
      const state = this.remaking.recreate([], [...nothing.missing], Number.POSITIVE_INFINITY);
      const missing = missingOf(instance, state.missing);
      const weight = missing > 0 ? 1e15 + missing : state.cost;
      if (missing === 0) this.search.offer(state.sheets);
      if (weight < least) [chosen, least] = [state, weight];
    }
    if (chosen !== null) this.aim(chosen);
  }

  private goal(): number {
    const { best, instance } = this.search;
    if (best.choice === null) return Number.POSITIVE_INFINITY;
    // Of the stock alone: what offcuts are worth and kinds cost does not limit what may be opened.
    const cost = best.choice.reduce(
      (sum, { pattern, count }) => sum + count * (instance.stocks[pattern.stock]?.cost ?? 0),
      0,
    );
    return cost - 1;
  }

  /** Begins anew from a plan, with as many sheets less as the goal wants. */
  private aim(state: SheetState): void {
    const { instance, random } = this.search;
    const sheets = [...state.sheets];
    const missing = [...state.missing];
    const costs = () => sheets.reduce((sum, { stock }) => sum + (instance.stocks[stock]?.cost ?? 0), 0);
    while (sheets.length > 0 && costs() > this.goal()) {
      // The sheet that holds least for its cost, with some chance.
      const ranked = sheets.map((sheet, at) => {
        const free = sheet.free.reduce((sum, { length, width }) => sum + length * width, 0);
        const { length = 1, width = 1, cost = 0 } = instance.stocks[sheet.stock] ?? {};
        return { at, rank: cost === 0 ? 2 : (1 - free / (length * width)) * (0.6 + 0.4 * random()) };
      });
      const [worst] = ranked.sort((a, b) => a.rank - b.rank);
      const [removed] = sheets.splice(worst?.at ?? 0, 1);
      const stack = removed === undefined ? [] : [removed.root];
      for (let region = stack.pop(); region !== undefined; region = stack.pop()) {
        if (region.part >= 0) missing[region.part] = (missing[region.part] ?? 0) + 1;
        stack.push(...region.pieces);
      }
    }
    this.accept(this.remaking.recreate(sheets, missing, this.goal()));
    this.history = Array.from({ length: HISTORY }, () => this.missing);
    this.idle = 0;
  }

  private accept(state: SheetState): void {
    this.state = state;
    this.missing = missingOf(this.search.instance, state.missing);
  }

  /** Works until so many places were looked at, the time's share is up, or the best plan is proven. */
  work(looks: number, timeShare: number): void {
    const { watch, best, instance } = this.search;
    const end = this.done + looks;
    while (this.done < end && !best.isProven()) {
      if (this.step % 16 === 0 && watch.isUp(timeShare)) return;
      this.step += 1;
      if (this.missing === 0) {
        this.search.offer(this.state.sheets);
        if (best.isProven()) return;
        this.aim(this.state);
        continue;
      }
      const next = this.remaking.change(this.state, this.goal());
      const missing = missingOf(instance, next.missing);
      const slot = this.step % HISTORY;
      if (missing < this.missing) this.idle = 0;
      else this.idle += 1;
      if (missing <= this.missing || missing <= (this.history[slot] ?? 0)) {
        if (missing < this.missing) this.search.keep(next.sheets);
        this.accept(next);
      }
      this.history[slot] = this.missing;
    }
  }
}
