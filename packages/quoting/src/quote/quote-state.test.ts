import { describe, expect, it } from 'vitest';
import {
  allows,
  QUOTE_ACTS,
  QUOTE_STATES,
  QuoteStateError,
  quoteStateOn,
  STORED_QUOTE_STATES,
  stateAfter,
} from './quote-state.ts';

// The order of a quote's life: common practice, no source.
describe('the states of a quote', () => {
  it('allow just these steps', () => {
    const steps = QUOTE_STATES.flatMap((state) =>
      QUOTE_ACTS.filter((act) => allows(state, act)).map(
        (act) => `${state} ${act} ${stateAfter(state, act)}`,
      ),
    );
    expect(steps.sort()).toEqual(
      [
        'draft edit draft',
        'draft remove draft',
        'draft send sent',
        ...['sent', 'accepted', 'declined', 'withdrawn', 'superseded'].map((one) => `${one} compare ${one}`),
        'expired compare sent',
        'sent renew-link sent',
        'sent accept accepted',
        'sent decline declined',
        'sent withdraw withdrawn',
        'sent revise sent',
        'sent supersede superseded',
        'expired decline declined',
        'expired withdraw withdrawn',
        'expired revise sent',
        'expired supersede superseded',
        'accepted add accepted',
        'declined revise declined',
        'declined supersede superseded',
        'withdrawn revise withdrawn',
        'withdrawn supersede superseded',
      ].sort(),
    );
  });

  it('refuse every other step with what to do instead', () => {
    for (const state of QUOTE_STATES)
      for (const act of QUOTE_ACTS.filter((one) => !allows(state, one))) {
        expect(() => stateAfter(state, act)).toThrow(QuoteStateError);
        const { message, mend } = new QuoteStateError(state, act);
        expect(message).toContain(state);
        expect(mend).toMatch(/\w{4}/);
      }
    expect(new QuoteStateError('accepted', 'edit').message).toBe(
      'The quote is accepted: it cannot be changed; make an addition: what was accepted stays as it is.',
    );
  });

  it('expire by the date of validity and by nothing else', () => {
    for (const stored of STORED_QUOTE_STATES) {
      expect(quoteStateOn(stored, '2026-03-31', '2026-03-31')).toBe(stored);
      expect(quoteStateOn(stored, null, '2026-04-01')).toBe(stored);
      const after = quoteStateOn(stored, '2026-03-31', '2026-04-01');
      expect(after).toBe(stored === 'sent' ? 'expired' : stored);
    }
  });
});
