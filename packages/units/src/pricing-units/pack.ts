import type { PricingUnit } from './pricing-unit.ts';

/** What the pack holds is the material’s. XPK: package code PK of UN/ECE Recommendation 21 behind an X. */
export const pack = {
  id: 'pack',
  label: 'pack',
  symbol: 'pack',
  code: 'XPK',
  baseUnit: 'pack',
  dimension: 'count',
  factor: '1',
  aliases: [
    'pack',
    'packs',
    'pk',
    'pkt',
    'packet',
    'pkg',
    'package',
    'box',
    'boxes',
    'bag',
    'set',
    'sets',
    'pair',
    'pairs',
    'pr',
    'prs',
    'dozen',
    'doz',
    'dz',
  ],
} as const satisfies PricingUnit;
