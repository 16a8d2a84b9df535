import type { PricingUnit } from './pricing-unit.ts';

/** Area of one face. */
export const squareMetre = {
  id: 'square-metre',
  label: 'square metre',
  symbol: 'm²',
  code: 'MTK',
  baseUnit: 'm2',
  dimension: 'area',
  factor: '1',
  aliases: [
    'm2',
    'm^2',
    'sqm',
    'sq m',
    'qm',
    'square metre',
    'square metres',
    'square meter',
    'square meters',
    'mtk',
  ],
} as const satisfies PricingUnit;
