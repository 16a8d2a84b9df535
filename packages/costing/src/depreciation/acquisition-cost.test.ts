import { describe, expect, it } from 'vitest';
import { acquisitionCost } from './acquisition-cost.ts';

describe('acquisition cost', () => {
  // OpenStax Financial Accounting section 11.3: drill press 22,000 + tax 2,500 + delivery and set-up 800.
  it('is all it took to get the asset working', () => {
    const parts = [
      { id: 'price', name: 'Price', amount: 22000 },
      { id: 'tax', name: 'Tax not recovered', amount: '2500' },
      { id: 'set-up', name: 'Delivery and set-up', amount: '800.00' },
    ];
    const cost = acquisitionCost(parts, { currency: 'USD' });
    expect([cost.value.toString(), cost.unit, cost.currency]).toEqual(['25300', 'money', 'USD']);
  });

  it('names the part that is wrong, and refuses none', () => {
    expect(() => acquisitionCost([], { currency: 'USD' })).toThrow('parts is empty');
    const wrong = [{ id: 'price', name: 'Price', amount: '-1' }];
    expect(() => acquisitionCost(wrong, { currency: 'USD' })).toThrow('parts.0.amount cannot be -1');
  });
});
