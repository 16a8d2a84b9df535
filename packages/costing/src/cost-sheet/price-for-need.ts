import type { Figure } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import type { BaseUnit, PricingUnitId } from '@scantling/units';
import type { Material } from '../material/index.ts';
import {
  type Bought,
  boughtCost,
  type ChosenOffer,
  chooseOffer,
  type OfferTiers,
  type PriceOffer,
} from '../price-list/index.ts';

/** The price used for a need, why, and what covering the need by it costs. */
export interface PricedNeed extends ChosenOffer {
  /** The need in the unit the price is per. */
  readonly used: Figure<BaseUnit>;
  readonly bought: Bought;
}

/** The day a price is looked for, YYYY-MM-DD, and the currency it must come to. */
export interface PriceTerms {
  readonly onDate: string;
  readonly currency: Currency;
}

/**
 * Which of the material's offers is used for a need on a day, as every cost sheet and every screen answers it.
 * @param needIn the need in the unit of a price, or null where that unit says nothing about the material
 * @returns null when no offer can cover the need
 */
export function priceForNeed(
  material: Material,
  { onDate, currency }: PriceTerms,
  needIn: (unit: PricingUnitId) => Figure<BaseUnit> | null,
  tiers: OfferTiers,
): PricedNeed | null {
  const tries = new Map<PriceOffer, Pick<PricedNeed, 'used' | 'bought'>>();
  const chosen = chooseOffer(material.offers, onDate, material.preferredSupplier, (offer) => {
    const used = needIn(offer.unit);
    if (used === null) return null;
    const bought = boughtCost(material.name, offer, used, material.boardContent, tiers);
    if (bought.cost.currency !== currency) return null;
    tries.set(offer, { used, bought });
    return bought.cost.value;
  });
  const found = chosen === null ? undefined : tries.get(chosen.offer);
  return chosen === null || found === undefined ? null : { ...chosen, ...found };
}
