import type { PriceChange } from '@scantling/costing';
import { PRICING_UNIT_IDS, PRICING_UNITS, type PricingUnitId, unitWords } from '@scantling/units';

/** Kinds of change in the order they are looked at, what must be mended first. */
export const CHANGE_ORDER: readonly PriceChange[] = [
  'unreadable',
  'new',
  'dearer',
  'cheaper',
  'changed',
  'gone',
  'unchanged',
];

export const CHANGE_WORDS: Readonly<Record<PriceChange, string>> = {
  unreadable: 'Cannot be read',
  new: 'New',
  dearer: 'Dearer',
  cheaper: 'Cheaper',
  changed: 'Other terms',
  gone: 'Gone',
  unchanged: 'Unchanged',
};

export const UNIT_CHOICES = PRICING_UNIT_IDS.map((id) => ({
  id,
  label: unitWords(PRICING_UNITS[id].baseUnit),
}));

export function priceUnitWords(unit: PricingUnitId): string {
  return unitWords(PRICING_UNITS[unit].baseUnit);
}
