import type { PricingUnit } from './pricing-unit.ts';

/** M is the Roman thousand. */
export const thousandBoardFeet = {
  id: 'thousand-board-feet',
  label: 'thousand board feet',
  symbol: 'MBF',
  code: 'MBF',
  baseUnit: 'MBF',
  dimension: 'board-measure',
  factor: '1000',
  aliases: [
    'mbf',
    'mbdft',
    'mfbm',
    'm bd ft',
    'thousand board feet',
    'thousand board foot',
    '1000 bf',
    '1000 bd ft',
  ],
} as const satisfies PricingUnit;
