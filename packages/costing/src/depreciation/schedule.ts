import { difference, type Figure, number, scale } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import type { CostingContext } from '../leaf-reader.ts';
import { type AssetFigures, type DepreciableAsset, readAsset } from './asset.ts';
import type { DepreciationPlan } from './method.ts';
import {
  DEPRECIATION_METHODS,
  type DepreciationMethod,
  type DepreciationMethodName,
  type DepreciationSettings,
} from './methods/index.ts';

/** One line of a schedule; opening - expense = closing. */
export interface DepreciationYear {
  /** Calendar year where the asset has a first year, else 1, 2, 3 ... */
  readonly year: number;
  readonly opening: Figure<'money'>;
  readonly expense: Figure<'money'>;
  readonly closing: Figure<'money'>;
}

/** What leaving the books brought: proceeds less book value; below 0 is a loss. */
export interface DisposalResult {
  readonly year: number;
  readonly bookValue: Figure<'money'>;
  readonly proceeds: Figure<'money'>;
  readonly gain: Figure<'money'>;
}

export interface DepreciationSchedule {
  readonly assetId: string;
  readonly assetName: string;
  readonly method: DepreciationMethodName;
  readonly methodLabel: string;
  readonly caution: string | null;
  readonly cost: Figure<'money'>;
  readonly salvage: Figure<'money'>;
  readonly years: readonly DepreciationYear[];
  /** All expenses added: cost less the last book value. */
  readonly total: Figure<'money'>;
  readonly disposal: DisposalResult | null;
}

/**
 * The yearly schedule of one asset under one method. Not rounded: amounts are rounded where they are shown.
 * @throws CostingInputError naming the field; settings of the method are under "depreciation."
 */
export function depreciationSchedule(
  method: DepreciationMethod,
  asset: DepreciableAsset,
  context: CostingContext,
): DepreciationSchedule {
  return scheduleOf(method, readAsset(asset, context));
}

/** The same for an asset that is in figures already. @throws CostingInputError */
export function scheduleOf<Name extends DepreciationMethodName>(
  method: DepreciationSettings[Name] & { readonly name: Name },
  figures: AssetFigures,
): DepreciationSchedule {
  const definition = DEPRECIATION_METHODS[method.name];
  const plan = definition.plan(figures, method);
  const last = lastLine(figures, plan);
  const years: DepreciationYear[] = [];
  let opening = figures.cost;
  for (let index = 0; index <= last; index += 1) {
    const year = figures.firstYear + index;
    const expense = {
      ...expenseOf(index, opening, figures, plan),
      label: `${figures.name}: depreciation in year ${year}`,
    };
    const closing = difference(`${figures.name}: book value at the end of year ${year}`, opening, expense);
    years.push({ year, opening, expense, closing });
    opening = closing;
  }
  return {
    assetId: figures.id,
    assetName: figures.name,
    method: method.name,
    methodLabel: definition.label,
    caution: definition.caution ?? null,
    cost: figures.cost,
    salvage: figures.salvage,
    years,
    // Not a sum of the lines: thirds of a cent, each rounded at the last digit held, would show in it.
    total: difference(`${figures.name}: depreciation in all`, figures.cost, opening),
    disposal: disposalOf(figures, opening),
  };
}

function lastLine(figures: AssetFigures, plan: DepreciationPlan): number {
  if (figures.disposal === null) return plan.years - 1;
  const index = figures.disposal.year - figures.firstYear;
  if (!Number.isInteger(index) || index < 0 || index > 500)
    throw new CostingInputError(
      'disposal.year',
      `cannot be ${figures.disposal.year}`,
      `enter a year from ${figures.firstYear} on`,
    );
  return index;
}

function expenseOf(
  index: number,
  opening: Figure<'money'>,
  figures: AssetFigures,
  plan: DepreciationPlan,
): Figure<'money'> {
  if (index >= plan.years)
    return scale('nothing more to write off', figures.cost, number(0, 'written off already'));
  const full = plan.expense(index, opening);
  if (figures.disposal === null || figures.firstYear + index !== figures.disposal.year) return full;
  const months = figures.reader.read('disposal.months', figures.disposal.months, {
    label: 'months in use in the year of disposal',
    unit: 'ratio',
    from: 0,
    to: 12,
  });
  const part = plan.shareOnDisposal(index, months);
  return part === null ? full : scale('until disposal', full, part);
}

function disposalOf(figures: AssetFigures, bookValue: Figure<'money'>): DisposalResult | null {
  if (figures.disposal === null) return null;
  const proceeds = figures.reader.read('disposal.proceeds', figures.disposal.proceeds, {
    label: 'proceeds of disposal',
    unit: 'money',
    from: 0,
  });
  return {
    year: figures.disposal.year,
    bookValue,
    proceeds,
    gain: difference(`${figures.name}: gain (below 0: loss) on disposal`, proceeds, bookValue),
  };
}
