import type { PricingUnit } from './pricing-unit.ts';

/** An hour of a bought service. */
export const hour = {
  id: 'hour',
  label: 'hour',
  symbol: 'h',
  code: 'HUR',
  baseUnit: 'h',
  dimension: 'time',
  factor: '1',
  aliases: ['h', 'hr', 'hrs', 'hour', 'hours', 'hur'],
} as const satisfies PricingUnit;
