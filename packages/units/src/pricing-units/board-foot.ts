import type { PricingUnit } from './pricing-unit.ts';

/** 144 cubic inches of nominal stock; 1 ft x 1 ft x 1 in. */
export const boardFoot = {
  id: 'board-foot',
  label: 'board foot',
  symbol: 'bd ft',
  code: 'BFT',
  baseUnit: 'bd ft',
  dimension: 'board-measure',
  factor: '1',
  aliases: ['bd ft', 'bdft', 'bf', 'bft', 'fbm', 'board foot', 'board feet', 'board ft'],
} as const satisfies PricingUnit;
