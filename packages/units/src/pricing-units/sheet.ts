import type { PricingUnit } from './pricing-unit.ts';

/** A whole sheet; its area is the material’s. XST: package code ST of UN/ECE Recommendation 21 behind an X. */
export const sheet = {
  id: 'sheet',
  label: 'sheet',
  symbol: 'sheet',
  code: 'XST',
  baseUnit: 'sheet',
  dimension: 'count',
  factor: '1',
  aliases: ['sheet', 'sheets', 'sht', 'shts', 'panel', 'panels'],
} as const satisfies PricingUnit;
