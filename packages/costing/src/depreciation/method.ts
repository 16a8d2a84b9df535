import type { Figure } from '@scantling/figures';
import type { AssetFigures } from './asset.ts';

/** How one asset is written off under one method: what each year takes from its opening book value. */
export interface DepreciationPlan {
  /** Number of lines, unless the asset is disposed of earlier. */
  readonly years: number;
  /** Expense of the line at `index` (from 0), never more than the book value above salvage. */
  expense(index: number, opening: Figure<'money'>): Figure<'money'>;
  /**
   * The part of the year's expense that is taken when the asset goes in that year after `months`;
   * null where the method counts use rather than time.
   */
  shareOnDisposal(index: number, months: Figure<'ratio'>): Figure<'ratio'> | null;
}

/** One depreciation method: one file in methods/, one line in its index. */
export interface MethodDefinition<Settings extends { readonly name: string }> {
  readonly name: Settings['name'];
  readonly label: string;
  /** Said beside every schedule made by it. */
  readonly caution?: string;
  /** @throws CostingInputError */
  plan(asset: AssetFigures, settings: Settings): DepreciationPlan;
}
