import { decimal } from '@scantling/decimals';
import { derive, exchange, type Figure, input, type Source } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { exchangeFigure, taxFactor } from './offer-prices.ts';
import type { Exchange, PurchaseTax } from './price-offer.ts';

/** What a supplier asks of every order, in the supplier's own currency. */
export interface SupplierTerms {
  /** As offers name the supplier. */
  readonly code: string;
  readonly name: string;
  readonly currency: Currency;
  /** Carriage to the workshop, once per order. */
  readonly freightPerOrder?: string;
  readonly minimumOrder?: string;
  readonly tax: PurchaseTax;
  /** Into the sheet's currency, where the supplier's is another. */
  readonly exchange?: Exchange;
}

/** An amount of the supplier's terms as it costs the workshop: tax that stays in, in the sheet's currency. */
export function termAtCost(
  terms: SupplierTerms,
  which: 'freightPerOrder' | 'minimumOrder',
): Figure<'money'> | null {
  const value = terms[which];
  if (value === undefined || decimal(value).isZero()) return null;
  const source: Source = {
    kind: 'supplier-terms',
    text: `terms of ${terms.name}`,
    record: `supplier:${terms.code}`,
  };
  const key = `supplier/${terms.code}`;
  const what = which === 'freightPerOrder' ? 'freight of an order' : 'least order';
  const listed = input({
    key: `${key}/${which === 'freightPerOrder' ? 'freight' : 'minimum-order'}`,
    label: `${terms.name}: ${what}`,
    unit: 'money',
    value,
    currency: terms.currency,
    source,
  });
  const factor = taxFactor(terms.name, terms.tax, `${key}/tax`, source);
  const net =
    factor === null
      ? listed
      : derive(`${terms.name}: ${what}, net of tax got back`, 'money', 'product', [listed, factor]);
  if (terms.exchange === undefined) return net;
  const rate = exchangeFigure(terms.currency, terms.exchange);
  return exchange(`${terms.name}: ${what} in ${terms.exchange.to}`, net, rate, terms.exchange.to);
}
