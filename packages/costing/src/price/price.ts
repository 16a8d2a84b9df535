import {
  complement,
  derive,
  difference,
  divide,
  type Figure,
  greatest,
  increment,
  input,
  type LeafBounds,
  number,
  per,
  round,
  roundUp,
  SHARE_BOUNDS,
  type Source,
  scale,
  share,
  sum,
  times,
} from '@scantling/figures';
import { type Currency, minorUnits } from '@scantling/money';
import { CostingInputError } from '../input-error.ts';
import type { PricePolicy } from './price-policy.ts';

/** What a price is made from; amounts for the whole batch, in one currency. */
export interface PriceBasis {
  /** How many pieces the amounts are for; 1 when absent. */
  readonly pieces?: Figure<'ratio'>;
  readonly costOfProduction: Figure<'money'>;
  /** Direct materials, bought-in and subcontract. */
  readonly materials: Figure<'money'>;
  readonly labour: Figure<'money'>;
  readonly machines: Figure<'money'>;
  /** Labour of the owner within the cost of production. */
  readonly ownerLabour: Figure<'money'>;
  /** All the owner's hours, quoting, buying and delivery included. */
  readonly ownerHours: Figure<'h'>;
  /** Cash that stays away if the work is not done, without the owner's hours. */
  readonly avoidable: Figure<'money'>;
}

export interface PriceTerms {
  readonly policy: PricePolicy;
  /** Share taken off the list price. */
  readonly discount: string;
  readonly priceStep?: { readonly to: string; readonly direction: 'up' | 'nearest' };
}

export interface Price {
  readonly listPrice: Figure<'money'>;
  /** After discount, before tax: what margin and earnings are measured on. */
  readonly netPrice: Figure<'money'>;
  readonly profit: Figure<'money'>;
  /** Share of the net price; null where the price is nothing. */
  readonly margin: Figure<'ratio'> | null;
  /** Share of the cost; null where the cost is nothing. */
  readonly markup: Figure<'ratio'> | null;
  /** (net price - all costs but the owner's labour) / all owner's hours; null without such hours. */
  readonly hourlyEarnings: Figure<'money/h'> | null;
  /** At this price the owner earns 0 an hour. */
  readonly floorPrice: Figure<'money'>;
}

interface Context {
  readonly currency: Currency;
  readonly source: Source;
}

/** Price by the policy, discount and rounding step, with what it leaves. @throws CostingInputError naming the field of the terms */
export function price(basis: PriceBasis, terms: PriceTerms, context: Context): Price {
  const discount = input({
    key: 'terms/discount',
    label: 'discount',
    unit: 'ratio',
    value: terms.discount,
    source: context.source,
    bounds: SHARE_BOUNDS,
  });
  if (discount.value.lt(0) || discount.value.gte(1)) {
    throw new CostingInputError(
      'terms.discount',
      `cannot be ${terms.discount}`,
      'enter a share from 0 to below 1 (0.05 is 5 %)',
    );
  }
  const wanted = byPolicy(basis, terms.policy, context, discount);
  const listPrice = round(
    'list price',
    stepped(wanted, terms.priceStep, context),
    minorUnits(context.currency),
  );
  const netPrice = discount.value.isZero()
    ? listPrice
    : round(
        'net price',
        scale('after discount', listPrice, complement('1 - discount', discount)),
        minorUnits(context.currency),
      );
  const profit = difference('profit', netPrice, basis.costOfProduction);
  const othersCost = difference(
    "all costs but the owner's labour",
    basis.costOfProduction,
    basis.ownerLabour,
  );
  return {
    listPrice,
    netPrice,
    profit,
    margin: netPrice.value.isZero() ? null : share('margin on the net price', profit, netPrice),
    markup: basis.costOfProduction.value.isZero()
      ? null
      : share('markup on cost', profit, basis.costOfProduction),
    hourlyEarnings: basis.ownerHours.value.isZero()
      ? null
      : per(
          'effective hourly earnings of the owner',
          difference("left for the owner's hours", netPrice, othersCost),
          basis.ownerHours,
        ),
    floorPrice: round(
      'floor price: you earn 0 an hour',
      greatest('avoidable cost', basis.avoidable, scale('nothing', basis.avoidable, number(0))),
      minorUnits(context.currency),
    ),
  };
}

/** The list price before rounding; margin and earnings are reached after the discount. */
function byPolicy(
  basis: PriceBasis,
  policy: PricePolicy,
  { currency, source }: Context,
  discount: Figure<'ratio'>,
): Figure<'money'> {
  const leaf = (key: string, label: string, value: string, bounds: LeafBounds = { least: '0' }) =>
    input({ key: `terms/policy/${key}`, label, unit: 'ratio', value, source, bounds });
  const up = (label: string, cost: Figure<'money'>, markup: Figure<'ratio'>) =>
    scale(label, cost, increment(`1 + ${markup.label}`, markup));
  const beforeDiscount = (net: Figure<'money'>) =>
    discount.value.isZero() ? net : divide('before discount', net, complement('1 - discount', discount));
  switch (policy.kind) {
    case 'markup':
      return up('cost and markup', basis.costOfProduction, leaf('markup', 'markup', policy.markup));
    case 'markup-by-class': {
      const known = sum('materials, labour and machines', 'money', [
        basis.materials,
        basis.labour,
        basis.machines,
      ]);
      return sum('cost and markup by class', 'money', [
        up(
          'materials and markup',
          basis.materials,
          leaf('materials', 'markup on materials', policy.materials),
        ),
        up('labour and markup', basis.labour, leaf('labour', 'markup on labour', policy.labour)),
        up('machines and markup', basis.machines, leaf('machines', 'markup on machines', policy.machines)),
        up(
          'the rest and markup',
          difference('the rest', basis.costOfProduction, known),
          leaf('other', 'markup on the rest', policy.other),
        ),
      ]);
    }
    case 'margin': {
      const margin = leaf('margin', 'margin', policy.margin, SHARE_BOUNDS);
      if (margin.value.gte(1))
        throw new CostingInputError(
          'terms.policy.margin',
          `cannot be ${policy.margin}`,
          'enter a share below 1 (0.35 is 35 %)',
        );
      return beforeDiscount(
        divide('cost / (1 - margin)', basis.costOfProduction, complement('1 - margin', margin)),
      );
    }
    case 'hourly-earnings': {
      const rate = input({
        key: 'terms/policy/per-hour',
        label: 'wanted for an hour',
        unit: 'money/h',
        value: policy.perHour,
        currency,
        source,
      });
      const own = times("the owner's hours", rate, basis.ownerHours);
      return beforeDiscount(
        sum("costs and the owner's hours", 'money', [
          difference("all costs but the owner's labour", basis.costOfProduction, basis.ownerLabour),
          own,
        ]),
      );
    }
    case 'entered': {
      const isPerPiece = policy.per === 'piece';
      const entered = input({
        key: 'terms/policy/price',
        label: isPerPiece ? 'price entered for a piece' : 'price entered for all pieces together',
        unit: 'money',
        value: policy.price,
        currency,
        source,
      });
      return isPerPiece && basis.pieces !== undefined
        ? scale('price entered, for all pieces', entered, basis.pieces)
        : entered;
    }
  }
}

function stepped(
  wanted: Figure<'money'>,
  step: PriceTerms['priceStep'],
  { currency, source }: Context,
): Figure<'money'> {
  if (step === undefined) return wanted;
  const to = input({
    key: 'terms/price-step',
    label: 'rounded to a multiple of',
    unit: 'money',
    value: step.to,
    currency,
    source,
  });
  if (to.value.lte(0))
    throw new CostingInputError(
      'terms.priceStep.to',
      `cannot be ${step.to}`,
      'enter an amount above 0, or leave rounding out',
    );
  if (step.direction === 'up') return roundUp('up to a pleasant price', wanted, to);
  const steps = round('whole steps', share('steps', wanted, to), 0);
  return derive('to the nearest pleasant price', 'money', 'product', [steps, to]);
}
