import type { PricingUnit } from './pricing-unit.ts';

/** The avoirdupois pound, 0.45359237 kg exactly. */
export const pound = {
  id: 'pound',
  label: 'pound',
  symbol: 'lb',
  code: 'LBR',
  baseUnit: 'lb',
  dimension: 'mass',
  factor: '0.45359237',
  aliases: ['lb', 'lbs', 'lbr', 'pound', 'pounds'],
} as const satisfies PricingUnit;
