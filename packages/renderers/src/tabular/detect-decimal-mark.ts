import type { DecimalMark } from './table.ts';

// "1,250" may be one and a quarter or twelve hundred and fifty: three digits after a single mark say nothing.
const BY_COMMA =
  /^[^\d,.]*(?:\d+|\d{1,3}(?:[.\s\u00a0\u202f'’]\d{3})+),(?:\d{1,2}|\d{4,})\D*$|^\D*\d{1,3}(?:\.\d{3})+,\d+\D*$|^\D*\d{1,3}(?:\.\d{3}){2,}\D*$/;
const BY_POINT =
  /^[^\d,.]*(?:\d+|\d{1,3}(?:[,\s\u00a0\u202f'’]\d{3})+)\.(?:\d{1,2}|\d{4,})\D*$|^\D*\d{1,3}(?:,\d{3})+\.\d+\D*$|^\D*\d{1,3}(?:,\d{3}){2,}\D*$/;

/** How numbers are written in these cells; `otherwise` where no cell tells. */
export function detectDecimalMark(cells: Iterable<string>, otherwise: DecimalMark): DecimalMark {
  let votes = 0;
  for (const cell of cells) {
    const text = cell.trim();
    if (text.length > 30) continue;
    if (BY_COMMA.test(text)) votes += 1;
    else if (BY_POINT.test(text)) votes -= 1;
  }
  if (votes === 0) return otherwise;
  return votes > 0 ? 'comma' : 'point';
}
