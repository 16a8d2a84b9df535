import type { DecimalLike } from '@scantling/decimals';
import { derive, difference, entered, type Figure, number, type Source, share } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { CostingInputError } from '../input-error.ts';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';

/** Something that is used up over years: a machine, a jig, a van. Amounts in the context's currency. */
export interface DepreciableAsset {
  readonly id: string;
  readonly name: string;
  /** All it took to get it working (price, freight, set-up); what was paid, for a second-hand one. */
  readonly cost: DecimalLike;
  /** What it is expected to fetch at the end; not used by tax tables. */
  readonly salvage: DecimalLike;
  /** Years of use when new; not used by tax tables and units of production. */
  readonly lifeYears?: DecimalLike;
  /** Second-hand: years it had run when bought, taken off the life. */
  readonly ageYears?: DecimalLike;
  /** Months in use in its first year, 1 to 12; a full year when absent. */
  readonly monthsInFirstYear?: DecimalLike;
  /** Calendar year of the first schedule line; lines are numbered from 1 when absent. */
  readonly firstYear?: number;
  /** Sold, scrapped or given away: the schedule ends here with a gain or a loss. */
  readonly disposal?: AssetDisposal;
}

export interface AssetDisposal {
  /** Counted as the schedule counts: calendar year where the asset has a first year, else 1, 2, 3 ... */
  readonly year: number;
  /** Months in use in that year, 0 to 12; units of production and tax tables do not look at them. */
  readonly months: DecimalLike;
  /** What it fetched, less the cost of selling. */
  readonly proceeds: DecimalLike;
}

/** The asset read into figures, for the methods. */
export interface AssetFigures {
  readonly id: string;
  readonly name: string;
  readonly currency: Currency;
  readonly reader: LeafReader;
  readonly cost: Figure<'money'>;
  readonly salvage: Figure<'money'>;
  /** Cost less salvage. */
  readonly depreciable: Figure<'money'>;
  /** The part of the first year it was in use. */
  readonly firstShare: Figure<'ratio'>;
  readonly firstYear: number;
  readonly disposal: AssetDisposal | null;
  /** Years of use it has left at the start. @throws CostingInputError where the asset states no life */
  life(): Figure<'year'>;
}

/** A schedule of more lines than this is a mistyped life. */
const LONGEST_LIFE = 200;

/** @throws CostingInputError naming the field, in particular salvage above cost and age beyond life */
export function readAsset(asset: DepreciableAsset, context: CostingContext): AssetFigures {
  const source: Source = context.source ?? entered();
  const reader = new LeafReader({
    keyPrefix: context.keyPrefix ?? `asset/${asset.id}`,
    currency: context.currency,
    source,
    subject: asset.name,
  });
  const cost = reader.read('cost', asset.cost, { label: 'cost', unit: 'money', from: 0 });
  const salvage = reader.read('salvage', asset.salvage, { label: 'salvage value', unit: 'money', from: 0 });
  if (salvage.value.gt(cost.value))
    throw new CostingInputError('salvage', 'is above cost', 'enter at most what the asset cost');
  return {
    id: asset.id,
    name: asset.name,
    currency: context.currency,
    reader,
    cost,
    salvage,
    depreciable: difference(`${asset.name}: cost less salvage`, cost, salvage),
    firstShare: firstYearShare(asset, reader),
    firstYear: asset.firstYear ?? 1,
    disposal: asset.disposal ?? null,
    life: () => lifeOf(asset, reader),
  };
}

function lifeOf(asset: DepreciableAsset, reader: LeafReader): Figure<'year'> {
  const whole = reader.read('lifeYears', asset.lifeYears, {
    label: 'life',
    unit: 'year',
    above: 0,
    to: LONGEST_LIFE,
  });
  if (asset.ageYears === undefined) return whole;
  const age = reader.read('ageYears', asset.ageYears, { label: 'age when bought', unit: 'year', from: 0 });
  if (age.value.gte(whole.value))
    throw new CostingInputError(
      'ageYears',
      'leaves no life',
      'enter a longer life, or the age in years of use',
    );
  return difference(`${asset.name}: life left when bought`, whole, age);
}

/** The part of its first year something was in use: months / 12, or all of it. @throws CostingInputError */
export function firstYearShare(
  asset: Pick<DepreciableAsset, 'name' | 'monthsInFirstYear'>,
  reader: LeafReader,
): Figure<'ratio'> {
  if (asset.monthsInFirstYear === undefined) return number(1, 'a full first year');
  const months = reader.read('monthsInFirstYear', asset.monthsInFirstYear, {
    label: 'months in use in the first year',
    unit: 'ratio',
    above: 0,
    to: 12,
  });
  return share(`${asset.name}: part of the first year in use`, months, number(12, 'months in a year'));
}

/**
 * The part of each year the asset is in use until its life is over: a part of the first, full years, and
 * what the first left over. They add up to the life.
 */
export function yearShares(asset: AssetFigures, life: Figure<'year'>): Figure<'ratio'>[] {
  const shares = [asset.firstShare];
  let used = asset.firstShare;
  while (used.value.lt(life.value)) {
    const left = derive('part of the last year in use', 'ratio', 'difference', [life, used]);
    const next = left.value.gte(1) ? number(1, 'a full year') : left;
    shares.push(next);
    used = derive('years in use so far', 'ratio', 'sum', [used, next]);
  }
  if (asset.firstShare.value.gt(life.value))
    return [derive('a life of less than the first year', 'ratio', 'same', [life])];
  return shares;
}

/** What is left to write off before the book value reaches salvage. */
export function aboveSalvage(opening: Figure<'money'>, asset: AssetFigures): Figure<'money'> {
  return difference('left above salvage', opening, asset.salvage);
}
