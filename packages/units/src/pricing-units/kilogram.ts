import type { PricingUnit } from './pricing-unit.ts';

/** Mass. */
export const kilogram = {
  id: 'kilogram',
  label: 'kilogram',
  symbol: 'kg',
  code: 'KGM',
  baseUnit: 'kg',
  dimension: 'mass',
  factor: '1',
  aliases: ['kg', 'kgs', 'kgm', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme'],
} as const satisfies PricingUnit;
