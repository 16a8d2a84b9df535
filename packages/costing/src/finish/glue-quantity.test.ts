import { describe, expect, it } from 'vitest';
import { glueQuantity } from './glue-quantity.ts';

const context = { currency: 'USD' } as const;
const glue = { id: 'pva', name: 'Glue', area: 50 } as const;

describe('the quantity of glue', () => {
  it('is area x spread, in either system', () => {
    const us = glueQuantity({ ...glue, spread: { unit: 'lb per 1000 ft2', value: 40 } }, context);
    expect([us.quantity.value.toString(), us.quantity.unit]).toEqual(['2', 'lb']);
    const metric = glueQuantity({ ...glue, spread: { unit: 'g per m2', value: 200 } }, context);
    expect([metric.quantity.value.toString(), metric.quantity.unit]).toEqual(['10', 'kg']);
    expect(metric.gramsPerM2.value.toString()).toBe('200');
  });

  it('refuses a spread of nothing', () => {
    expect(() => glueQuantity({ ...glue, spread: { unit: 'g per m2', value: 0 } }, context)).toThrow(
      'spread cannot be 0',
    );
  });
});
