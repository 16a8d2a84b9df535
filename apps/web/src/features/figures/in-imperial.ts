import { decimal } from '@scantling/decimals';
import type { FigureNode } from '@scantling/figures';
import { formatLength, M2_PER_SQUARE_FOOT, unitWords } from '@scantling/units';
import { formatNumber, type WrittenAmount } from '../../lib/format.ts';

const PLACES_OF_SQUARE_FEET = 2;

/** Lengths in inches, areas in square feet; null for what has no such measure. */
export function inImperial(
  { unit, value }: Pick<FigureNode, 'unit' | 'value'>,
  locale: string,
): WrittenAmount | null {
  if (unit === 'mm') {
    const text = formatLength(value, 'imperial');
    return { number: text, unit: '', text };
  }
  if (unit !== 'm2') return null;
  const feet = decimal(value).div(M2_PER_SQUARE_FOOT).toFixed();
  const number = formatNumber(feet, PLACES_OF_SQUARE_FEET, { locale, places: PLACES_OF_SQUARE_FEET });
  const words = unitWords('ft2');
  return { number, unit: words, text: `${number} ${words}` };
}
