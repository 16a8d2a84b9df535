import type { OverheadAmountRecord } from '@scantling/contracts';
import type { OverheadBase } from '@scantling/costing';

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

export const BASE_WORDS: Readonly<Record<OverheadBase, string>> = {
  'productive-hours': 'productive hours',
  'machine-hours': 'machine hours',
  'labour-cost': 'labour cost',
  'prime-cost': 'prime cost',
};

/** Bases whose rate is a share of a cost and reads as a percentage. */
export function isShareOfCost(base: OverheadBase): boolean {
  return base === 'labour-cost' || base === 'prime-cost';
}
