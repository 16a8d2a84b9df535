import { describe, expect, it } from 'vitest';
import { sampleOffer } from '../cost-sheet/sample-sheet.ts';
import { chooseOffer } from './choose-offer.ts';
import type { PriceOffer } from './price-offer.ts';

const amount = (offer: PriceOffer) => offer.breaks[0]?.amount ?? null;
const at = (code: string, price: string, changes: Partial<PriceOffer> = {}) =>
  sampleOffer({ code, breaks: [{ from: '0', amount: price }], ...changes });

describe('the price used on a date', () => {
  it('is the cheapest in force, and says of how many', () => {
    const chosen = chooseOffer([at('A', '6'), at('B', '5')], '2026-06-01', undefined, amount);
    expect([chosen?.offer.code, chosen?.rule]).toEqual([
      'B',
      'the price in force on 2026-06-01, the cheapest of 2 for this quantity',
    ]);
  });

  it("is the preferred supplier's where it has one, though dearer", () => {
    const offers = [at('A', '6', { supplier: 'mill' }), at('B', '5')];
    expect(chooseOffer(offers, '2026-06-01', 'mill', amount)?.offer.code).toBe('A');
    expect(chooseOffer(offers, '2026-06-01', 'nobody', amount)?.offer.code).toBe('B');
  });

  it('is the newest list of an article, and the newer list, then the lower code, of equal prices', () => {
    const old = at('A', '1');
    const newer = at('A', '6', { listDate: '2026-05-01' });
    expect(chooseOffer([old, newer], '2026-06-01', undefined, amount)?.offer).toBe(newer);
    expect(chooseOffer([old, newer], '2026-04-30', undefined, amount)?.offer).toBe(old);
    expect(chooseOffer([at('C', '6'), newer], '2026-06-01', undefined, amount)?.offer).toBe(newer);
    expect(chooseOffer([at('C', '6'), at('B', '6')], '2026-06-01', undefined, amount)?.offer.code).toBe('B');
  });

  it('is one that has run out only where none is in force, and the rule says so', () => {
    const over = at('A', '4', { validTo: '2026-03-31' });
    expect(chooseOffer([over, at('B', '9')], '2026-06-01', undefined, amount)?.offer.code).toBe('B');
    expect(chooseOffer([over], '2026-06-01', undefined, amount)?.rule).toBe(
      'the last price there was, which ran out on 2026-03-31',
    );
  });

  it('is never one that a complete list has ended, nor one listed later, nor one that cannot cover the need', () => {
    const ended = at('A', '4', { endedFrom: '2026-03-01' });
    const later = at('B', '4', { listDate: '2026-07-01' });
    expect(chooseOffer([ended, later], '2026-06-01', undefined, amount)).toBeNull();
    expect(chooseOffer([at('A', '4')], '2026-06-01', undefined, () => null)).toBeNull();
  });
});
