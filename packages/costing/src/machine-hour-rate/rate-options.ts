import type { CostingContext } from '../leaf-reader.ts';
import type { ShopCosts } from './tool.ts';

/** What a machine-hour rate needs beside the tool. */
export interface RateOptions {
  readonly context: CostingContext;
  readonly shop: ShopCosts;
  /** (P - S)(N + 1) / (2N) + S as the forestry handbooks do (the default), or (P + S) / 2. */
  readonly averageInvestment?: 'forestry' | 'simple';
  /** The year of the schedule the book basis is for; needed unless the books write off in a straight line. */
  readonly namedYear?: number;
}
