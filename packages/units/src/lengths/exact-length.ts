import { type DecimalLike, decimal } from '@scantling/decimals';
import { APPROXIMATION_MARK, formatLength, type LengthSystem } from './format-length.ts';

/**
 * Writes a length so that it reads back as itself: inches where 64ths of one are exact, else millimetres (`13/16"`,
 * `18 mm`), since a sheet of 18 mm is no sheet of 3/4 in.
 * @param mm length in millimetres
 */
export function exactLength(mm: DecimalLike, system: LengthSystem): string {
  const written = formatLength(mm, system, { denominator: 64, places: 6 });
  return written.startsWith(APPROXIMATION_MARK) ? `${decimal(mm).toFixed()} mm` : written;
}
