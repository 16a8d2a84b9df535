import type { PricingUnit } from './pricing-unit.ts';

/** A metre along the piece, whatever its section. */
export const linearMetre = {
  id: 'linear-metre',
  label: 'linear metre',
  symbol: 'lin m',
  code: 'LM',
  baseUnit: 'lin m',
  dimension: 'length',
  factor: '1',
  aliases: [
    'lin m',
    'lm',
    'lfm',
    'rm',
    'linear metre',
    'linear metres',
    'linear meter',
    'linear meters',
    'running metre',
    'running meter',
    'm',
    'metre',
    'meter',
    'mtr',
  ],
} as const satisfies PricingUnit;
