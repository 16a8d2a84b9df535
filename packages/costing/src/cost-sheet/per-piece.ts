import { divide, type Figure } from '@scantling/figures';
import type { Unit } from '@scantling/units';

/** A figure of the batch, for one of its pieces. */
export function perPiece<U extends Unit>(
  label: string,
  figure: Figure<U>,
  pieces: Figure<'ratio'>,
): Figure<U> {
  return divide(label, figure, pieces);
}
