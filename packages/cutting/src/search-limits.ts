import { CuttingCancelledError } from './cutting-errors.ts';

/** How far a search has come, in the instance's money. */
export interface SearchProgress {
  /** null while no plan is known. */
  readonly cost: string | null;
  readonly bound: string;
  /** cost / bound - 1; null without either. */
  readonly gap: string | null;
}

export interface SearchLimits {
  /** How much is tried; 1 is what a workshop waits a few seconds for. The same effort gives the same plan. */
  readonly effort: number;
  /** ms on `clock` after which the search ends with what it has. */
  readonly mostMs: number;
  /** Milliseconds from any beginning. */
  readonly clock: () => number;
  readonly onProgress?: (progress: SearchProgress) => void;
  /** True calls the search off. */
  readonly isCancelled?: () => boolean;
}

/** Counts the work of one search and watches its clock. */
export class SearchWatch {
  private readonly end: number;
  private readonly begin: number;
  /** Whether the clock ever stopped a part of the search. */
  isOutOfTime = false;

  constructor(readonly limits: SearchLimits) {
    this.begin = limits.clock();
    this.end = this.begin + limits.mostMs;
  }

  /** Seconds left of all of the time, 0 at least. */
  secondsLeft(): number {
    return Math.max(0, (this.end - this.limits.clock()) / 1000);
  }

  /** How much of all the time is gone, 1 when it is up. */
  shareUsed(): number {
    return Math.min(1, (this.limits.clock() - this.begin) / this.limits.mostMs);
  }

  /** True once the time, or this share of it, is up. @throws CuttingCancelledError */
  isUp(share = 1): boolean {
    if (this.limits.isCancelled?.() === true) throw new CuttingCancelledError();
    if (this.limits.clock() < this.begin + this.limits.mostMs * share) return false;
    this.isOutOfTime = true;
    return true;
  }
}
