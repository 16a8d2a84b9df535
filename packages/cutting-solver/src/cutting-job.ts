import type { CuttingInstance, CuttingPlan, SearchProgress } from '@scantling/cutting';

/** One plan for the worker. */
export interface CuttingJob {
  readonly instance: CuttingInstance;
  readonly timeLimitMs: number;
  /** One Int32; anything but 0 calls the search off. */
  readonly cancelled: SharedArrayBuffer;
}

export type CuttingMessage =
  | { readonly kind: 'progress'; readonly progress: SearchProgress }
  | { readonly kind: 'planned'; readonly plan: CuttingPlan; readonly elapsedMs: number }
  | {
      readonly kind: 'refused';
      readonly code: 'cutting-input' | 'cutting-impossible';
      readonly field: string;
      readonly reason: string;
      readonly mend: string;
    }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly text: string };
