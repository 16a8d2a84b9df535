import type { SearchProgress, SearchWatch } from '../search-limits.ts';
import { costOf, type Pattern, type PatternChoice } from './pattern.ts';

export interface PlanTerms {
  /** All plans cost a whole number of money steps. */
  readonly hasWholeCosts: boolean;
  readonly priceOfKind: number;
  /** Puts a cost in steps into words. */
  readonly write: (steps: number) => string;
}

/** The best plan so far and the best bound, with what is told about them. */
export class BestPlan<P extends Pattern> {
  choice: PatternChoice<P> | null = null;
  cost = Number.POSITIVE_INFINITY;
  bound = 0;

  constructor(
    readonly terms: PlanTerms,
    private readonly watch: SearchWatch,
  ) {}

  weigh(choice: PatternChoice<P>): number {
    const kinds = new Set(choice.map(({ pattern }) => pattern.stock)).size;
    return costOf(choice) + kinds * this.terms.priceOfKind;
  }

  /** @returns whether it is cheaper than what was known */
  offer(choice: PatternChoice<P> | null): boolean {
    if (choice === null) return false;
    const cost = this.weigh(choice);
    if (cost >= this.cost - 1e-9) return false;
    this.choice = choice;
    this.cost = cost;
    this.tell();
    return true;
  }

  /** Takes a lower bound; where costs are whole, so is the bound. */
  raise(bound: number): void {
    if (!Number.isFinite(bound)) return;
    const slack = 1e-6 + 1e-10 * Math.abs(bound);
    const safe = this.terms.hasWholeCosts ? Math.ceil(bound - slack) : bound - slack;
    if (safe <= this.bound) return;
    // A bound above a plan that was checked can only be a solver's tolerance.
    this.bound = Math.min(safe, this.cost);
    this.tell();
  }

  isProven(): boolean {
    return this.cost - this.bound <= 1e-6;
  }

  /** How little more than the bound the best plan may cost and still be the best. */
  leastGap(): number {
    return this.terms.hasWholeCosts ? 0.999_999 : 1e-6;
  }

  private tell(): void {
    const { onProgress } = this.watch.limits;
    if (onProgress === undefined) return;
    const isKnown = Number.isFinite(this.cost);
    const progress: SearchProgress = {
      cost: isKnown ? this.terms.write(this.cost) : null,
      bound: this.terms.write(this.bound),
      gap: isKnown && this.bound > 0 ? (this.cost / this.bound - 1).toFixed(6) : null,
    };
    onProgress(progress);
  }
}
