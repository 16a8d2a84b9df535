/**
 * The units a figure can carry. `money` stands for an amount whose currency the figure names beside it,
 * `ratio` for a pure number, `piece` for one finished piece of the design, `each` for one bought thing.
 */
export const BASE_UNITS = [
  'money',
  'ratio',
  'h',
  'year',
  'mm',
  'm',
  'in',
  'ft',
  'mm2',
  'm2',
  'ft2',
  'mm3',
  'm3',
  'bd ft',
  'MBF',
  'lin ft',
  'lin m',
  'sheet',
  'each',
  'pack',
  'piece',
  'l',
  'gal',
  'kg',
  'lb',
  'kW',
  'kWh',
  'coat',
  'mil',
  'um',
] as const;

export type BaseUnit = (typeof BASE_UNITS)[number];
/** A base unit, or one base unit per another ("money/bd ft", "h/year"). */
export type Unit = BaseUnit | `${BaseUnit}/${BaseUnit}`;

/** True when the unit is money or money per something, so that the figure must name a currency. */
export function isMoneyUnit(unit: Unit): boolean {
  return unit === 'money' || unit.startsWith('money/');
}
