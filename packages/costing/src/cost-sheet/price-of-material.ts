import { constant, derive, type Figure, input } from '@scantling/figures';
import { type BaseUnit, PRICING_UNITS, type PricingUnitId } from '@scantling/units';
import type { Material } from '../material/index.ts';
import { OfferTiers, offersInForce } from '../price-list/index.ts';
import { MaterialLeaves } from './material-leaves.ts';
import { type PricedNeed, type PriceTerms, priceForNeed } from './price-for-need.ts';
import { inPriceUnit, USED_IN } from './use-quantity.ts';

/** A price looked up for a material on its own, with the need it was looked up for. */
export interface MaterialPriceAnswer {
  readonly needed: Figure<BaseUnit>;
  /** Null when nothing can cover the need. */
  readonly price: PricedNeed | null;
}

/** The units a need can be stated in: that of use, and those of the prices in force on the day, newest list first. */
export function needUnits(material: Material, onDate: string): PricingUnitId[] {
  const listed = offersInForce(material.offers, onDate)
    .toSorted((a, b) => b.listDate.localeCompare(a.listDate))
    .map(({ unit }) => unit);
  return [...new Set([...listed, USED_IN[material.form]])];
}

/**
 * The price used for a need that stands on no cost sheet: the same offers, the same rule and the same bill as on one,
 * without the workshop's allowance for waste.
 * @param need in any pricing unit that says something about the material
 * @throws CostingInputError where the material's record lacks a size that a price needs
 */
export function priceOfMaterial(
  material: Material,
  need: { readonly quantity: string; readonly unit: PricingUnitId },
  terms: PriceTerms,
): MaterialPriceAnswer {
  const leaves = new MaterialLeaves();
  const needed: Figure<BaseUnit> = input({
    key: `need/${material.code}`,
    label: `${material.name}: quantity needed`,
    unit: PRICING_UNITS[need.unit].baseUnit,
    value: need.quantity,
    source: { kind: 'entered', text: 'the quantity asked for' },
  });
  const price = priceForNeed(
    material,
    terms,
    (unit) => inUnit(material, needed, need.unit, unit, leaves),
    new OfferTiers(),
  );
  return { needed, price };
}

function inUnit(
  material: Material,
  needed: Figure<BaseUnit>,
  from: PricingUnitId,
  to: PricingUnitId,
  leaves: MaterialLeaves,
): Figure<BaseUnit> | null {
  if (from === to) return needed;
  const usedIn = PRICING_UNITS[USED_IN[material.form]];
  if (from === usedIn.id) return inPriceUnit(material, needed, to, leaves);
  // Every way from the unit of use into a price's unit is one factor: what one of the first comes to.
  const one = constant(`one ${usedIn.symbol}`, usedIn.baseUnit, 1);
  const held = inPriceUnit(material, one, from, leaves);
  if (held === null || held.value.isZero()) return null;
  const used = derive(`${material.name}: ${usedIn.symbol} needed`, usedIn.baseUnit, 'quotient', [
    needed,
    held,
  ]);
  return inPriceUnit(material, used, to, leaves);
}
