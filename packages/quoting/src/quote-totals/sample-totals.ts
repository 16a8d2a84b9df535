import type { QuoteTotalsInput, TotalsLine } from './totals-input.ts';

export const SAMPLE_TAXES = [
  { id: 'full', category: 'S', rate: '0.19', name: 'VAT 19 %', exemptionReason: '' },
  { id: 'low', category: 'S', rate: '0.07', name: 'VAT 7 %', exemptionReason: '' },
  { id: 'none', category: 'E', rate: '0', name: 'exempt', exemptionReason: '' },
] as const;
const INCLUDED = { kind: 'included' } as const;

/** A line of one at this price, under the first tax. */
export function sampleLine(id: string, price: string, more: Partial<TotalsLine> = {}): TotalsLine {
  return { id, label: id, quantity: '1', price, tax: 'full', choice: INCLUDED, ...more };
}

/** A document without lines, to which tests add. */
export function sampleTotals(more: Partial<QuoteTotalsInput>): QuoteTotalsInput {
  return {
    currency: 'EUR',
    priceMode: 'exclusive',
    taxes: SAMPLE_TAXES,
    lines: [],
    chosen: [],
    discount: null,
    schedule: [],
    ...more,
  };
}
