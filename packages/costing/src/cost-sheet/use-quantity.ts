import { decimal } from '@scantling/decimals';
import { constant, derive, type Figure, greatest, number } from '@scantling/figures';
import type { BaseUnit } from '@scantling/units';
import { CostingInputError } from '../input-error.ts';
import type { Material, MaterialForm } from '../material/index.ts';
import { PRICE_UNITS, type PriceUnit } from '../price-list/index.ts';
import type { SheetContext } from './sheet-context.ts';

/** The unit a need of each form is added up in, before it meets a price. */
export const USE_UNITS = {
  'rough-lumber': 'm2',
  'dimensioned-lumber': 'm',
  sheet: 'm2',
  each: 'each',
  pack: 'each',
  volume: 'l',
  weight: 'kg',
  area: 'm2',
  length: 'm',
  service: 'h',
} as const satisfies Record<MaterialForm, BaseUnit>;

/** Purchase units of a measure, with what a metric unit of it is in them; all exact. */
const FEET_IN_METRE = constant(
  'feet in a metre (0.3048 m in a foot, exact)',
  'ratio',
  decimal(1).div('0.3048'),
);
const FT2_IN_M2 = constant(
  'square feet in a square metre (0.09290304 m2 in one, exact)',
  'ratio',
  decimal(1).div('0.09290304'),
);
const GALLONS_IN_LITRE = constant(
  'US gallons in a litre (3.785411784 l in one, exact)',
  'ratio',
  decimal(1).div('3.785411784'),
);
const POUNDS_IN_KG = constant(
  'pounds in a kilogram (0.45359237 kg in one, exact)',
  'ratio',
  decimal(1).div('0.45359237'),
);
const MM_IN_INCH = constant('millimetres in an inch (exact)', 'ratio', '25.4');
const MM_IN_M = constant('millimetres in a metre', 'ratio', 1000);
const ONE_INCH = constant('board measure counts at least 1 in of thickness', 'in', 1);

/**
 * A need in the unit the material is used in, as the quantity a price asks for: board measure with its 1 in
 * floor, volume and area without it, packs by their content.
 * @returns null when that unit says nothing about that form, so that another offer is looked for
 */
export function inPriceUnit(
  material: Material,
  need: Figure<BaseUnit>,
  unit: PriceUnit,
  sheet: SheetContext,
): Figure<BaseUnit> | null {
  const label = `${material.name}: ${need.unit} in ${PRICE_UNITS[unit]}`;
  const to = PRICE_UNITS[unit];
  const by = (factor: Figure<'ratio'>) => derive(label, to, 'product', [need, factor]);
  const content = (what: Figure<BaseUnit>) => derive(label, to, 'quotient', [need, what]);
  if (need.unit === to || (need.unit === 'm' && to === 'lin m')) return derive(label, to, 'same', [need]);
  if (unit === 'pack' || (unit === 'each' && material.packContent !== undefined)) {
    return material.packContent === undefined ? null : content(packContent(material, need.unit, sheet));
  }
  switch (need.unit) {
    case 'm2':
      if (unit === 'square-foot') return by(FT2_IN_M2);
      if (unit === 'sheet' || (unit === 'each' && material.form === 'sheet'))
        return content(sheetFace(material, sheet));
      return volumeUnits(material, need, unit, label, sheet);
    case 'm':
      if (unit === 'linear-foot') return by(FEET_IN_METRE);
      if (unit === 'each')
        return material.length === undefined ? null : content(metres(material, 'length', sheet));
      return null;
    case 'l':
      return unit === 'us-gallon' ? by(GALLONS_IN_LITRE) : null;
    case 'kg':
      return unit === 'pound' ? by(POUNDS_IN_KG) : null;
    case 'h':
      return unit === 'each' ? derive(label, to, 'same', [need]) : null;
    default:
      return null;
  }
}

function volumeUnits(
  material: Material,
  need: Figure<BaseUnit>,
  unit: PriceUnit,
  label: string,
  sheet: SheetContext,
): Figure<BaseUnit> | null {
  if (unit !== 'board-foot' && unit !== 'thousand-board-feet' && unit !== 'cubic-metre') return null;
  if (material.nominalThickness === undefined) return null;
  const thickness = sheet.fromMaterial(
    material,
    'nominal-thickness',
    `${material.name}: nominal thickness`,
    'mm',
    material.nominalThickness,
  );
  if (unit === 'cubic-metre') {
    return derive(label, 'm3', 'product', [
      need,
      derive('thickness in m', 'm', 'quotient', [thickness, MM_IN_M]),
    ]);
  }
  const inches = greatest(
    'thickness counted',
    derive('thickness in inches', 'in', 'quotient', [thickness, MM_IN_INCH]),
    ONE_INCH,
  );
  const boardFeet = derive(label, 'bd ft', 'product', [need, FT2_IN_M2, inches]);
  if (unit === 'board-foot') return boardFeet;
  return derive(label, 'MBF', 'quotient', [boardFeet, number(1000, 'board feet in a thousand')]);
}

function packContent(material: Material, unit: BaseUnit, sheet: SheetContext): Figure<BaseUnit> {
  return sheet.fromMaterial(
    material,
    'pack-content',
    `${material.name}: content of a pack`,
    unit,
    material.packContent ?? '1',
  );
}

/** A side of the material as bought, in metres. @throws CostingInputError when the record does not say */
function metres(material: Material, side: 'length' | 'width', sheet: SheetContext): Figure<'m'> {
  const value = material[side];
  if (value === undefined) {
    throw new CostingInputError(
      `materials.${material.code}.${side}`,
      'is missing',
      'enter the size it is sold in',
    );
  }
  const mm = sheet.fromMaterial(material, side, `${material.name}: ${side}`, 'mm', value);
  return derive(`${material.name}: ${side} in metres`, 'm', 'quotient', [mm, MM_IN_M]);
}

function sheetFace(material: Material, sheet: SheetContext): Figure<'m2'> {
  return derive(`${material.name}: face of a sheet`, 'm2', 'product', [
    metres(material, 'length', sheet),
    metres(material, 'width', sheet),
  ]);
}
