import { type Decimal, decimal } from '@scantling/decimals';
import { derive, type Figure, greatest, input, least, per, roundUp, sum, times } from '@scantling/figures';
import { type BaseUnit, PRICING_UNITS } from '@scantling/units';
import { OfferTiers, offerKey, offerSource, type Tiers } from './offer-prices.ts';
import type { PriceOffer } from './price-offer.ts';

/** What is bought to cover a need, and what it costs net of recoverable tax. */
export interface Bought {
  readonly quantity: Figure<BaseUnit>;
  readonly cost: Figure<'money'>;
  /** Cost of one purchase unit at that quantity. */
  readonly unitCost: Figure<`money/${BaseUnit}`>;
}

/** The multiple an offer is sold in: its pack size, or whole things where things are counted. */
function soldIn(offer: PriceOffer, wholeBoards: string | undefined): string | undefined {
  if (offer.packSize !== undefined) return offer.packSize;
  if (offer.unit === 'sheet' || offer.unit === 'each' || offer.unit === 'pack') return '1';
  return offer.unit === 'board-foot' ? wholeBoards : undefined;
}

/**
 * The least bill that covers the need: whole packs, boards and sheets, the minimum quantity, at the break
 * the bought quantity earns, and more than the need where a break makes more cheaper than less.
 * @param need in the offer's purchase unit
 * @param wholeBoards board feet of a board, where the yard sells no part of one
 * @param known where the offer's prices are kept between calls
 */
export function boughtCost(
  label: string,
  offer: PriceOffer,
  need: Figure<BaseUnit>,
  wholeBoards?: string,
  known = new OfferTiers(),
): Bought {
  const tiers = known.of(offer);
  const quantity = leastQuantity(label, offer, need, soldIn(offer, wholeBoards));
  const cost = costOfQuantity(label, offer, tiers, quantity);
  return { quantity, cost, unitCost: unitCost(label, tiers, cost, quantity) };
}

function unitCost(label: string, tiers: Tiers, cost: Figure<'money'>, quantity: Figure<BaseUnit>) {
  if (quantity.value.isZero()) return tiers[0].price;
  return per(`${label}: cost of a ${quantity.unit} bought`, cost, quantity);
}

function leastQuantity(
  label: string,
  offer: PriceOffer,
  need: Figure<BaseUnit>,
  step: string | undefined,
): Figure<BaseUnit> {
  const unit = PRICING_UNITS[offer.unit].baseUnit;
  const leaf = (key: string, what: string, value: string) =>
    input({
      key: `${offerKey(offer)}/${key}`,
      label: `${offer.code}: ${what}`,
      unit,
      value,
      source: offerSource(offer),
    });
  const wanted =
    offer.minimumQuantity === undefined || need.value.isZero()
      ? need
      : greatest(
          `${label}: at least the minimum`,
          need,
          leaf('minimum', 'minimum quantity', offer.minimumQuantity),
        );
  const whole = (figure: Figure<BaseUnit>) =>
    step === undefined
      ? figure
      : roundUp(`${label}: bought`, figure, leaf('sold-in', 'sold in multiples of', step));
  const plain = whole(wanted);
  if (offer.breakKind === 'incremental' || need.value.isZero()) return plain;
  let best = { quantity: plain, cost: plainCost(offer, plain.value) };
  for (const { from } of offer.breaks) {
    if (decimal(from).lte(plain.value)) continue;
    const more = whole(
      greatest(
        `${label}: up to the break`,
        wanted,
        leaf(`break-${from}`, `quantity of the break at ${from}`, from),
      ),
    );
    const cost = plainCost(offer, more.value);
    if (cost.lt(best.cost))
      best = {
        quantity: { ...more, note: `cheaper than ${plain.value.toString()} at the price before the break` },
        cost,
      };
  }
  return best.quantity;
}

/** All-units cost without figures, to compare candidates; tax and exchange scale all alike and stay out. */
function plainCost(offer: PriceOffer, quantity: Decimal): Decimal {
  let amount = decimal(offer.breaks[0]?.amount ?? '0');
  for (const step of offer.breaks) if (quantity.gte(step.from)) amount = decimal(step.amount);
  return amount.times(quantity);
}

function costOfQuantity(
  label: string,
  offer: PriceOffer,
  tiers: Tiers,
  quantity: Figure<BaseUnit>,
): Figure<'money'> {
  if (offer.breakKind === 'all-units') {
    let price = tiers[0].price;
    for (const tier of tiers.slice(1)) {
      price = derive('price at this quantity', price.unit, 'choose', [
        quantity,
        tier.from,
        tier.price,
        price,
      ]);
    }
    return times(`${label}: bought`, price, quantity);
  }
  const slices = tiers.map((tier, index) => {
    const next = tiers[index + 1];
    const upTo = next === undefined ? quantity : least('up to the next break', quantity, next.from);
    const within = derive('beyond the break', quantity.unit, 'difference', [upTo, tier.from]);
    const none = derive('nothing', quantity.unit, 'difference', [tier.from, tier.from]);
    return times(`from ${tier.from.value.toString()}`, tier.price, greatest('in this break', within, none));
  });
  return sum(`${label}: bought`, 'money', slices);
}
