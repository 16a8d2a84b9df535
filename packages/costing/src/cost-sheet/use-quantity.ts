import { decimal } from '@scantling/decimals';
import { constant, derive, type Figure, greatest } from '@scantling/figures';
import {
  type BaseUnit,
  M2_PER_SQUARE_FOOT,
  MM_PER_INCH,
  PRICING_UNITS,
  type PricingUnit,
  type PricingUnitId,
} from '@scantling/units';
import { CostingInputError } from '../input-error.ts';
import type { Material, MaterialForm } from '../material/index.ts';
import type { MaterialLeaves } from './material-leaves.ts';

/** The pricing unit a need of each form is added up in, before it meets a price: the first of its dimension. */
export const USED_IN = {
  'rough-lumber': 'square-metre',
  'dimensioned-lumber': 'linear-metre',
  sheet: 'square-metre',
  each: 'each',
  pack: 'each',
  volume: 'litre',
  weight: 'kilogram',
  area: 'square-metre',
  length: 'linear-metre',
  service: 'hour',
} as const satisfies Record<MaterialForm, PricingUnitId>;

const FT2_IN_M2 = constant(
  'square feet in a square metre (0.09290304 m2 in one, exact)',
  'ratio',
  decimal(1).div(M2_PER_SQUARE_FOOT),
);
const MM_IN_INCH = constant('millimetres in an inch (exact)', 'ratio', MM_PER_INCH);
const MM_IN_M = constant('millimetres in a metre', 'ratio', 1000);
const ONE_INCH = constant('board measure counts at least 1 in of thickness', 'in', 1);

/** The unit that figures of a need of this form carry. */
export function useUnit(form: MaterialForm): BaseUnit {
  return PRICING_UNITS[USED_IN[form]].baseUnit;
}

/**
 * A need in the unit the material is used in, as the quantity a price asks for: within one dimension by the units'
 * own factors, board measure with its 1 in floor, volume without it, sheets, packs and sticks by what one holds.
 * @returns null when that unit says nothing about that form, so that another offer is looked for
 */
export function inPriceUnit(
  material: Material,
  need: Figure<BaseUnit>,
  unit: PricingUnitId,
  leaves: Pick<MaterialLeaves, 'fromMaterial'>,
): Figure<BaseUnit> | null {
  const from: PricingUnit = PRICING_UNITS[USED_IN[material.form]];
  const to: PricingUnit = PRICING_UNITS[unit];
  const label = `${material.name}: ${from.symbol} in ${to.symbol}`;
  const content = contentOfOne(material, unit, need.unit, leaves);
  if (content !== null) return derive(label, to.baseUnit, 'quotient', [need, content]);
  if (from.id === to.id || (from.id === 'hour' && to.id === 'each'))
    return derive(label, to.baseUnit, 'same', [need]);
  if (from.dimension === to.dimension && from.dimension !== 'count')
    return derive(label, to.baseUnit, 'quotient', [need, inOne(to, from)]);
  if (from.dimension === 'area') return byThickness(material, need, to, label, leaves);
  return from.dimension === 'length' ? bySection(material, need, to, label, leaves) : null;
}

/** Sticks priced by what is in them: board feet as the yard counts a stick, volume by its section as sold. */
function bySection(
  material: Material,
  need: Figure<BaseUnit>,
  to: PricingUnit,
  label: string,
  leaves: Pick<MaterialLeaves, 'fromMaterial'>,
): Figure<BaseUnit> | null {
  const { boardContent, length, width, thickness } = material;
  if (to.dimension === 'board-measure' && boardContent !== undefined && length !== undefined) {
    const name = `${material.name}: board feet of one`;
    const ofOne = leaves.fromMaterial(material, 'board-content', name, 'bd ft', boardContent);
    const sticks = derive(`${material.name}: sticks`, 'each', 'quotient', [
      need,
      metres(material, 'length', leaves),
    ]);
    return inUnit(to, label, [sticks, ofOne]);
  }
  if (to.dimension !== 'volume' || width === undefined || thickness === undefined) return null;
  return inUnit(to, label, [need, metres(material, 'width', leaves), metres(material, 'thickness', leaves)]);
}

/** A quantity in the base of the unit's dimension, then in the unit itself. */
function inUnit(to: PricingUnit, label: string, inputs: readonly Figure[]): Figure<BaseUnit> {
  const base = derive(label, to.baseUnit, 'product', inputs);
  if (to.factor === '1') return base;
  const ofOne = constant(`${to.dimension} units in one ${to.symbol}`, 'ratio', to.factor);
  return derive(label, to.baseUnit, 'quotient', [base, ofOne]);
}

/** How much of the use unit one purchase unit is; both units of one dimension, whose base is the use unit. */
function inOne(to: PricingUnit, from: PricingUnit): Figure<'ratio'> {
  return constant(`${from.symbol} in one ${to.symbol} (exact)`, 'ratio', to.factor);
}

/** What one thing of a counted unit holds: a pack its content, a sheet its face, a stick its length. */
function contentOfOne(
  material: Material,
  unit: PricingUnitId,
  usedIn: BaseUnit,
  leaves: Pick<MaterialLeaves, 'fromMaterial'>,
): Figure<BaseUnit> | null {
  const isOne = unit === 'pack' || unit === 'each';
  if (isOne && material.packContent !== undefined) return packContent(material, usedIn, leaves);
  if (unit === 'sheet' || (unit === 'each' && material.form === 'sheet'))
    return usedIn === 'm2' ? sheetFace(material, leaves) : null;
  if (unit === 'each' && usedIn === 'lin m' && material.length !== undefined)
    return metres(material, 'length', leaves);
  return null;
}

function byThickness(
  material: Material,
  need: Figure<BaseUnit>,
  to: PricingUnit,
  label: string,
  leaves: Pick<MaterialLeaves, 'fromMaterial'>,
): Figure<BaseUnit> | null {
  const { dimension } = to;
  if (dimension !== 'board-measure' && dimension !== 'volume') return null;
  if (material.nominalThickness === undefined) return null;
  const thickness = leaves.fromMaterial(
    material,
    'nominal-thickness',
    `${material.name}: nominal thickness`,
    'mm',
    material.nominalThickness,
  );
  if (dimension === 'volume')
    return inUnit(to, label, [need, derive('thickness in m', 'm', 'quotient', [thickness, MM_IN_M])]);
  const inches = greatest(
    'thickness counted',
    derive('thickness in inches', 'in', 'quotient', [thickness, MM_IN_INCH]),
    ONE_INCH,
  );
  return inUnit(to, label, [need, FT2_IN_M2, inches]);
}

function packContent(
  material: Material,
  unit: BaseUnit,
  leaves: Pick<MaterialLeaves, 'fromMaterial'>,
): Figure<BaseUnit> {
  return leaves.fromMaterial(
    material,
    'pack-content',
    `${material.name}: content of a pack`,
    unit,
    material.packContent ?? '1',
  );
}

/** A side of the material as bought, in metres. @throws CostingInputError when the record does not say */
function metres(
  material: Material,
  side: 'length' | 'width' | 'thickness',
  leaves: Pick<MaterialLeaves, 'fromMaterial'>,
): Figure<'m'> {
  const value = material[side];
  if (value === undefined) {
    throw new CostingInputError(
      `materials.${material.code}.${side}`,
      'is missing',
      'enter the size it is sold in',
    );
  }
  const mm = leaves.fromMaterial(material, side, `${material.name}: ${side}`, 'mm', value);
  return derive(`${material.name}: ${side} in metres`, 'm', 'quotient', [mm, MM_IN_M]);
}

function sheetFace(material: Material, leaves: Pick<MaterialLeaves, 'fromMaterial'>): Figure<'m2'> {
  return derive(`${material.name}: face of a sheet`, 'm2', 'product', [
    metres(material, 'length', leaves),
    metres(material, 'width', leaves),
  ]);
}
