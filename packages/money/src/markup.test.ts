import { decimal } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { marginFromMarkup, markupFromMargin, priceByMargin, priceByMarkup } from './markup.ts';

// Definitions: common practice, no source.
describe('markup and margin', () => {
  it('agree on the price', () => {
    const markups = fc.integer({ min: -900, max: 5_000 });
    fc.assert(
      fc.property(markups, fc.integer({ min: 0, max: 10 ** 8 }), (thousandths, cents) => {
        const markup = decimal(thousandths).div(1000);
        const cost = decimal(cents).div(100);
        const margin = marginFromMarkup(markup);
        expect(markupFromMargin(margin).minus(markup).abs().lt('1e-25')).toBe(true);
        const difference = priceByMarkup(cost, markup).minus(priceByMargin(cost, margin));
        expect(difference.abs().lt('1e-18')).toBe(true);
      }),
    );
  });

  it('refuse what has no answer', () => {
    expect(() => priceByMargin(100, 1)).toThrow('margin is 1: enter a fraction below 1');
    expect(() => marginFromMarkup(-1)).toThrow('markup is -1');
    expect(() => priceByMarkup('x', 1)).toThrow('cost is "x": enter a number');
  });
});
