import type { MaterialForm, PriceUnit } from '@scantling/costing';
import { PRICE_UNITS } from '@scantling/costing';
import { unitWords } from '@scantling/units';

export const FORM_WORDS: Readonly<Record<MaterialForm, string>> = {
  'rough-lumber': 'rough lumber',
  'dimensioned-lumber': 'dimensioned lumber',
  sheet: 'sheet',
  each: 'each',
  pack: 'pack',
  volume: 'by volume',
  weight: 'by weight',
  area: 'by area',
  length: 'by length',
  service: 'service',
};

export function priceUnitWords(unit: PriceUnit): string {
  return unitWords(PRICE_UNITS[unit]);
}
