import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { QuotingInputError } from '../input-error.ts';
import { type PaperStyle, paperWriters } from './paper-style.ts';

const american: PaperStyle = { locale: 'en-US', currency: 'USD', lengths: 'imperial' };
const british: PaperStyle = { locale: 'en-GB', currency: 'GBP', lengths: 'metric' };
const spaced = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

describe('writing for a paper', () => {
  it('keeps a number and its unit on one line', () => {
    const { money, quantity, size, date, percent } = paperWriters({
      ...british,
      locale: 'de-DE',
      currency: 'EUR',
    });
    const written = [
      money('1245.5'),
      quantity('2', 'piece'),
      size(['1200', '450']),
      date('2026-11-25'),
      percent('0.19'),
    ];
    expect(written.join('')).not.toContain(' ');
    expect(spaced(written.join('; '))).toBe('1.245,50 €; 2 pieces; 1200 × 450 mm; 25. November 2026; 19 %');
  });

  it('writes days in the order of the place', () => {
    expect(spaced(paperWriters(american).date('2026-02-28'))).toBe('February 28, 2026');
    expect(spaced(paperWriters(british).date('2026-02-28'))).toBe('28 February 2026');
    // 2024 and 2000 are leap years, 1900 is none (Gregorian calendar).
    expect(spaced(paperWriters(british).date('2024-02-29'))).toBe('29 February 2024');
  });

  it.each(['2026-02-30', '1900-02-29', '2026-13-01', '25.11.2026', '', '2026-11-25T10:00:00Z'])(
    'refuses "%s" as a day',
    (day) => {
      expect(() => paperWriters(british).date(day)).toThrow(QuotingInputError);
    },
  );

  it('writes a day as the same day wherever the program runs', () => {
    const days = fc.date({ min: new Date('1970-01-01'), max: new Date('2200-01-01'), noInvalidDate: true });
    fc.assert(
      fc.property(days, (at) => {
        const day = at.toISOString().slice(0, 10);
        expect(
          paperWriters(british)
            .date(day)
            .startsWith(`${Number(day.slice(8))}\u00a0`),
        ).toBe(true);
      }),
    );
  });

  it('counts pieces with their word and single things without', () => {
    const { quantity } = paperWriters(british);
    const written = [
      quantity('1', 'piece'),
      quantity('4', 'each'),
      quantity('1', 'each'),
      quantity('32.5', 'bd ft'),
      quantity('1250.25', 'lin m'),
      quantity('0.5', 'sheet'),
    ];
    expect(written.map(spaced)).toEqual(['1 piece', '4', '1', '32.5 bd ft', '1,250.25 lin m', '0.5 sheets']);
  });

  it('writes sizes in the system of the workshop', () => {
    expect(spaced(paperWriters(american).size(['1200.15', '457.2']))).toBe('47 1/4" × 18"');
    expect(spaced(paperWriters(british).size(['1200', '450', '460.25']))).toBe('1200 × 450 × 460.3 mm');
    expect(spaced(paperWriters(american).length('600.075'))).toBe('23 5/8"');
  });

  it('keeps a price below the cent, and rounds an amount half away from zero', () => {
    const { price, money } = paperWriters(american);
    expect([price('0.0425'), price('12'), money('1.005'), money('-1.005')]).toEqual([
      '$0.0425',
      '$12.00',
      '$1.01',
      '\u2212$1.01',
    ]);
  });
});
