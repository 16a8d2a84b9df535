import type { OverheadAmountRecord } from '@scantling/contracts';
import { OVERHEAD_BASE_WORDS, type OverheadBase } from '@scantling/costing';

export const HOME_WORDS: Readonly<Record<OverheadAmountRecord['home'], string>> = {
  'machine-rate': 'Machine-hour rates',
  'labour-rate': 'Labour rates',
  'workshop-pool': 'Workshop overhead',
  'administration-pool': 'Administration overhead',
};

type Recovery = NonNullable<OverheadAmountRecord['recoveredAs']>;

export const RECOVERY_WORDS: Readonly<Record<Recovery, string>> = {
  hire: 'Hire of tools',
  depreciation: 'Depreciation',
  interest: 'Interest',
  insurance: 'Insurance and tax',
  floor: 'Floor of machines',
  power: 'Power of machines',
  maintenance: 'Maintenance',
  cutters: 'Blades, knives and cutters',
  pay: 'Pay with its burden',
};

/** What a rate of the base is: an amount for an hour, or a share of a cost. */
export function baseWords(base: OverheadBase): string {
  const words = OVERHEAD_BASE_WORDS[base];
  return isShareOfCost(base) ? `share of ${words}` : words;
}

/** Bases whose rate is a share of a cost and reads as a percentage. */
export function isShareOfCost(base: OverheadBase): boolean {
  return base === 'labour-cost' || base === 'prime-cost';
}
