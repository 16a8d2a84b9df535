import type { PricingUnit } from './pricing-unit.ts';

/** A foot along the piece, whatever its section. */
export const linearFoot = {
  id: 'linear-foot',
  label: 'linear foot',
  symbol: 'lin ft',
  code: 'LF',
  baseUnit: 'lin ft',
  dimension: 'length',
  factor: '0.3048',
  aliases: ['lin ft', 'lf', 'lft', 'ln ft', 'linear foot', 'linear feet', 'ft', 'foot', 'feet'],
} as const satisfies PricingUnit;
