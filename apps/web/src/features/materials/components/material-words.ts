import type { MaterialForm } from '@scantling/costing';
import { PRICING_UNITS, type PricingUnitId, unitWords } from '@scantling/units';

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

export function priceUnitWords(unit: PricingUnitId): string {
  return unitWords(PRICING_UNITS[unit].baseUnit);
}
