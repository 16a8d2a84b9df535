import type { PriceChange, PriceUnit } from '@scantling/costing';
import { PRICE_UNITS } from '@scantling/costing';
import { unitWords } from '@scantling/units';

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

export const UNIT_CHOICES = (Object.keys(PRICE_UNITS) as PriceUnit[]).map((id) => ({
  id,
  label: unitWords(PRICE_UNITS[id]),
}));

export function priceUnitWords(unit: PriceUnit): string {
  return unitWords(PRICE_UNITS[unit]);
}
