import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { positive } from '../input-error.ts';

/** Outer sides of a parcel: inches with a divisor in in3/lb, or centimetres with one in cm3/kg. */
export interface ParcelSize {
  readonly length: DecimalLike;
  readonly width: DecimalLike;
  readonly height: DecimalLike;
}

export interface DimensionalWeight {
  readonly volume: Decimal;
  /** Volume / divisor. */
  readonly exact: Decimal;
  /** Up to the next whole lb or kg. */
  readonly weight: Decimal;
}

/**
 * Dimensional weight of a parcel. The divisor is a term of the carrier's contract (139, 166 and 194 in3/lb are all met).
 * Source: freight forwarders' pages.
 * @throws MeasureInputError for a side or divisor that is not above 0
 */
export function dimensionalWeight(size: ParcelSize, divisor: DecimalLike): DimensionalWeight {
  const volume = positive('length', size.length)
    .times(positive('width', size.width))
    .times(positive('height', size.height));
  const exact = volume.div(positive('divisor', divisor));
  return { volume, exact, weight: exact.ceil() };
}

/** The weight a carrier bills: the greater of actual and dimensional weight (same pages). */
export function billableWeight(actual: DecimalLike, dimensional: DimensionalWeight): Decimal {
  const weight = positive('actual', actual);
  return decimal(weight.gt(dimensional.weight) ? weight : dimensional.weight);
}
