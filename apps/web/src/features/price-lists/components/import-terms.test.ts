import { describe, expect, it } from 'vitest';
import { freshTerms, termsOf } from './import-terms.ts';

describe('what a list says of itself', () => {
  const fresh = freshTerms('s1', '2026-03-01');

  it("leaves to the supplier's record what was not said", () => {
    expect(termsOf(fresh)).toEqual({ supplierId: 's1', validFrom: '2026-03-01', isComplete: false });
  });

  it('sends terms of its own only while they differ', () => {
    const own = { ...fresh, differs: true, currency: 'USD', taxIncluded: 'true', taxRate: '7,5' };
    expect(termsOf(own)).toMatchObject({ currency: 'USD', taxIncluded: true, taxRate: '0.075' });
    expect(termsOf({ ...own, differs: false })).not.toHaveProperty('currency');
  });

  it('keeps a last day and a name where they were given', () => {
    expect(termsOf({ ...fresh, validTo: '2026-09-30', name: ' Spring ' })).toMatchObject({
      validTo: '2026-09-30',
      name: 'Spring',
    });
  });
});
