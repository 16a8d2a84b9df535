import type { PricingUnit } from './pricing-unit.ts';

/** Liquid measure. */
export const litre = {
  id: 'litre',
  label: 'litre',
  symbol: 'l',
  code: 'LTR',
  baseUnit: 'l',
  dimension: 'liquid',
  factor: '1',
  aliases: ['l', 'ltr', 'lt', 'litre', 'litres', 'liter', 'liters'],
} as const satisfies PricingUnit;
