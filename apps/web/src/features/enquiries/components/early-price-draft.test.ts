import { exampleEarlyPriceInput, examplePastPiece, workOutEarlyPrice } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import type { PastPieceAnswer } from '../api/past-pieces.ts';
import { NEW_DRAFT, ruleOf, sizeTexts, toEarlyPriceInput } from './early-price-draft.ts';

const past: PastPieceAnswer = {
  piece: examplePastPiece,
  currency: 'EUR',
  onDate: '2026-03-01',
  priceThen: '3675',
  terms: exampleEarlyPriceInput.terms,
};
const asked = { length: '2000', width: '45 cm', height: '800' };

describe('what is typed for an early price', () => {
  it('becomes the input of the calculation', () => {
    expect(toEarlyPriceInput({ ...NEW_DRAFT, ...asked }, [past], 'metric')).toEqual(exampleEarlyPriceInput);
    const inches = { length: '80', width: '18"', height: `2' 8"` };
    const { size } = toEarlyPriceInput({ ...NEW_DRAFT, ...inches }, [past], 'imperial').asked;
    expect(size).toEqual({ length: '2032', width: '457.2', height: '812.8' });
  });

  it('starts from the size of the past piece', () => {
    expect(sizeTexts(examplePastPiece, 'metric')).toEqual({
      length: '1600 mm',
      width: '450 mm',
      height: '800 mm',
    });
  });

  it('takes hours in place of scaled ones, and an adjustment with its reason', () => {
    const draft = { ...NEW_DRAFT, ...asked, hours: '52,5', adjustment: '10', reason: 'curved front' };
    const input = toEarlyPriceInput(draft, [past], 'metric');
    expect([input.asked.hours, input.adjustment]).toEqual([
      '52.5',
      { factor: '1.1', reason: 'curved front' },
    ]);
    expect(ruleOf(draft, 'labour').basis).toBe('hours');
    expect(ruleOf(NEW_DRAFT, 'labour')).toEqual({ basis: 'area', exponent: '0.5' });
  });

  it('turns a price that was entered into the markup it left', () => {
    const entered = {
      ...past,
      terms: { discount: '0', policy: { kind: 'entered', price: '3675' } as const },
    };
    const input = toEarlyPriceInput({ ...NEW_DRAFT, ...asked }, [entered], 'metric');
    // 3675 on a cost of 2940.
    expect(input.terms.policy).toEqual({ kind: 'markup', markup: '0.25' });
    expect(() => workOutEarlyPrice(input, { withDerivations: true })).not.toThrow();
  });

  it('names what cannot be read', () => {
    const read = (change: object) => () =>
      toEarlyPriceInput({ ...NEW_DRAFT, ...asked, ...change }, [past], 'metric');
    expect(read({ width: 'wide' })).toThrow('asked.size.width cannot be "wide"');
    expect(read({ height: '' })).toThrow('asked.size.height is missing');
    expect(read({ adjustment: 'more' })).toThrow('adjustment.factor cannot be "more"');
    expect(() => toEarlyPriceInput(NEW_DRAFT, [], 'metric')).toThrow('pieces cannot be 0');
  });
});
