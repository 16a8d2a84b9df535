import { exclusiveTotals, salesTax } from '@scantling/money';
import { z } from 'zod';
import { number, numbers, runner } from '../checked-inputs.ts';

const tax = { category: z.string(), rate: number };
const adjustments = z.array(z.strictObject({ ...tax, amount: number })).default([]);
const line = z.strictObject({
  ...tax,
  quantity: number,
  netPrice: number,
  priceBaseQuantity: number.default(1),
  charge: number.default(0),
  allowance: number.default(0),
});

const document = {
  lines: z.array(line),
  allowances: adjustments,
  charges: adjustments,
  prepaid: number.default(0),
  rounding: z.enum(['half-away', 'half-even']).default('half-away'),
};

export const exclusiveTotalsRunner = runner(document, (inputs) => {
  const totals = exclusiveTotals({ currency: 'EUR', ...inputs });
  return { ...totals, taxable: Object.fromEntries(totals.taxes.map((one) => [one.category, one.taxable])) };
});

export const salesTaxRunner = runner({ prices: numbers, rate: number }, ({ prices, rate }) => ({
  item: salesTax(prices, rate, 'USD', 'item'),
  invoice: salesTax(prices, rate, 'USD', 'invoice'),
}));
