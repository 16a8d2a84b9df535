import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { PRICING_UNITS, type PricingUnit, type PricingUnitId } from './pricing-units/index.ts';

/** Thrown when a quantity of one unit says nothing about a quantity of the other. */
export class UnitConversionError extends Error {
  readonly code = 'units-do-not-convert';
  constructor(
    readonly from: PricingUnitId,
    readonly to: PricingUnitId,
  ) {
    const [left, right] = [PRICING_UNITS[from].label, PRICING_UNITS[to].label];
    super(`${left} does not convert to ${right}: name a material whose sizes or pack content connect them`);
    this.name = 'UnitConversionError';
  }
}

/**
 * The same quantity in another unit of its dimension. Sheets, packs and single things convert only through a
 * material, and board measure is of nominal sizes, so it never becomes a volume here.
 * @throws UnitConversionError
 */
export function convertQuantity(quantity: DecimalLike, from: PricingUnitId, to: PricingUnitId): Decimal {
  if (from === to) return decimal(quantity);
  const [source, target]: [PricingUnit, PricingUnit] = [PRICING_UNITS[from], PRICING_UNITS[to]];
  if (source.dimension !== target.dimension || source.dimension === 'count') {
    throw new UnitConversionError(from, to);
  }
  return decimal(quantity).times(source.factor).div(target.factor);
}
