import type { PricingUnit } from './pricing-unit.ts';

/** One bought thing. */
export const each = {
  id: 'each',
  label: 'each',
  symbol: 'each',
  code: 'EA',
  baseUnit: 'each',
  dimension: 'count',
  factor: '1',
  aliases: [
    'each',
    'ea',
    'pc',
    'pcs',
    'piece',
    'pieces',
    'unit',
    'units',
    'no',
    'nos',
    'stk',
    'stück',
    'st',
    'pce',
    'h87',
    'c62',
  ],
} as const satisfies PricingUnit;
