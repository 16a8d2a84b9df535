import { type Decimal, type DecimalLike, ONE } from '@scantling/decimals';
import { fraction, number } from '../input-error.ts';

export interface PurchaseTax {
  /** Fraction: 19 % is 0.19. */
  readonly rate: DecimalLike;
  /** True when the price holds the tax already. */
  readonly isIncluded: boolean;
  /** Fraction of the tax that the tax office gives back: 1 all, 0 nothing. */
  readonly recoverableShare: DecimalLike;
}

export interface TaxedPurchase {
  readonly net: Decimal;
  readonly tax: Decimal;
  readonly recoverable: Decimal;
  /** Net and the tax that cannot be recovered: what the purchase costs. */
  readonly cost: Decimal;
  /** What is paid to the supplier. */
  readonly gross: Decimal;
}

/**
 * What a price costs once its tax is sorted out: cost = net + what cannot be recovered. Nothing is rounded.
 * Common practice, no source; what is recoverable is a matter of local law.
 * @throws MoneyInputError
 */
export function purchaseCost(price: DecimalLike, purchaseTax: PurchaseTax): TaxedPurchase {
  const stated = number('price', price);
  const rate = fraction('rate', purchaseTax.rate);
  const net = purchaseTax.isIncluded ? stated.div(rate.plus(1)) : stated;
  const tax = purchaseTax.isIncluded ? stated.minus(net) : net.times(rate);
  const share = fraction('recoverableShare', purchaseTax.recoverableShare);
  return {
    net,
    tax,
    recoverable: tax.times(share),
    cost: net.plus(tax.times(ONE.minus(share))),
    gross: net.plus(tax),
  };
}
