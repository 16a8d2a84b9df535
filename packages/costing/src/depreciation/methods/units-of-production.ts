import { type DecimalLike, ZERO } from '@scantling/decimals';
import { derive, difference, type Figure, least, per, times } from '@scantling/figures';
import { CostingInputError } from '../../input-error.ts';
import { type AssetFigures, aboveSalvage } from '../asset.ts';
import type { MethodDefinition } from '../method.ts';

export interface UnitsOfProduction {
  readonly name: 'units-of-production';
  /** What wears it out: hours run or pieces made. */
  readonly unit: 'h' | 'piece';
  /** Units in its life when new. */
  readonly lifeUnits: DecimalLike;
  /** Second-hand: units it had made when bought. */
  readonly unitsBefore?: DecimalLike;
  /** Units made in each year, as planned or as measured; one line of the schedule each. */
  readonly unitsByYear: readonly DecimalLike[];
}

/** Cost less salvage over the units in its life, times the units of the year; stops at salvage. */
export const unitsOfProduction: MethodDefinition<UnitsOfProduction> = {
  name: 'units-of-production',
  label: 'units of production',
  plan(asset, settings) {
    if (settings.unitsByYear.length === 0)
      throw new CostingInputError(
        'depreciation.unitsByYear',
        'is empty',
        'enter the units made in each year',
      );
    const lifeUnits = unitsLeft(asset, settings);
    const rate = per(`${asset.name}: depreciation per unit`, asset.depreciable, lifeUnits);
    const units = settings.unitsByYear.map((value, index) =>
      asset.reader.read(`depreciation.unitsByYear.${index}`, value, {
        label: `units in year ${asset.firstYear + index}`,
        unit: settings.unit,
        from: 0,
      }),
    );
    return {
      years: units.length,
      expense: (index, opening) => {
        const left = aboveSalvage(opening, asset);
        const made = units[index];
        const soFar = units.slice(0, index + 1).reduce((total, figure) => total.plus(figure.value), ZERO);
        // Where the life is used up, all that is left goes: a rounded rate times units could miss it.
        if (made === undefined || soFar.gte(lifeUnits.value)) return left;
        return least('not below salvage', times('wear of the year', rate, made), left);
      },
      shareOnDisposal: () => null,
    };
  },
};

function unitsLeft(asset: AssetFigures, settings: UnitsOfProduction): Figure<'h' | 'piece'> {
  const whole = asset.reader.read('depreciation.lifeUnits', settings.lifeUnits, {
    label: 'units in its life',
    unit: settings.unit,
    above: 0,
  });
  if (settings.unitsBefore === undefined) return whole;
  const before = asset.reader.read('depreciation.unitsBefore', settings.unitsBefore, {
    label: 'units made before it was bought',
    unit: settings.unit,
    from: 0,
  });
  if (before.value.gte(whole.value))
    throw new CostingInputError('depreciation.unitsBefore', 'leaves no life', 'enter a longer life in units');
  return derive(`${asset.name}: units left when bought`, settings.unit, 'same', [
    difference('units in its life less units before', whole, before),
  ]);
}
