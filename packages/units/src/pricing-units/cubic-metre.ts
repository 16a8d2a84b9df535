import type { PricingUnit } from './pricing-unit.ts';

/** Actual volume, without the floor of board measure. */
export const cubicMetre = {
  id: 'cubic-metre',
  label: 'cubic metre',
  symbol: 'm³',
  code: 'MTQ',
  baseUnit: 'm3',
  dimension: 'volume',
  factor: '1',
  aliases: ['m3', 'm^3', 'cbm', 'cu m', 'cubic metre', 'cubic metres', 'cubic meter', 'cubic meters', 'mtq'],
} as const satisfies PricingUnit;
