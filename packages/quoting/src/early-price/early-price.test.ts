import { recalculate, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_BAND, type EarlyPriceInput, earlyPrice, type PastPiece } from './index.ts';

// Invented pieces; the values asked for are worked out by hand beside each check.
const piece = (changes: Partial<PastPiece> = {}): PastPiece => ({
  id: 'sideboard',
  name: 'Sideboard',
  size: { length: '1600', width: '400', height: '800' },
  hours: '40',
  materials: '600',
  boughtIn: '100',
  labour: '1600',
  machines: '100',
  overhead: '400',
  other: '200',
  ownerHours: '42',
  ownerLabour: '1600',
  ...changes,
});
const given = (changes: Partial<EarlyPriceInput> = {}): EarlyPriceInput => ({
  currency: 'EUR',
  pieces: [piece()],
  asked: { size: { length: '1600', width: '400', height: '800' } },
  terms: { discount: '0', policy: { kind: 'margin', margin: '0.25' } },
  ...changes,
});
const { asked: sameSize } = given();

describe('an early price from one past piece', () => {
  it('is the price of the piece itself where the same is asked for, in a band of common practice', () => {
    const { low, likely, high, spread, standing } = earlyPrice(given());
    // 3000 / (1 - 0.25), and the same of 3000 x 0.85 and 3000 x 1.25.
    expect([low, likely, high].map((one) => one.price.value.toNumber())).toEqual([3400, 4000, 5000]);
    expect([low, likely, high].map((one) => one.hours.value.toNumber())).toEqual([34, 40, 50]);
    expect([spread, standing]).toEqual(['band', 'before-bill-of-materials']);
    expect([DEFAULT_BAND.below, DEFAULT_BAND.above]).toEqual(['0.15', '0.25']);
  });

  it('lets each class grow with its own measure', () => {
    const grow = (basis: 'volume' | 'area' | 'length' | 'count' | 'none', exponent = '1') => ({
      basis,
      exponent,
    });
    const { pieces } = earlyPrice(
      given({
        pieces: [piece({ count: 4 })],
        asked: { size: { length: '3200', width: '400', height: '800' }, count: '6' },
        scaling: {
          materials: grow('volume'),
          boughtIn: grow('count'),
          labour: grow('length', '0.5'),
          machines: grow('area'),
          overhead: { basis: 'hours', exponent: '2' },
          other: grow('none'),
        },
      }),
    );
    const factor = (name: 'materials' | 'boughtIn' | 'labour' | 'machines' | 'overhead' | 'other') =>
      pieces[0]?.scaled.factors[name].value.toNumber();
    expect([factor('materials'), factor('boughtIn'), factor('other')]).toEqual([2, 1.5, 1]);
    expect(factor('labour')).toBeCloseTo(Math.SQRT2, 10);
    // Hours grow by the square root of 2, squared again: 2.
    expect(factor('overhead')).toBeCloseTo(2, 10);
    // 2 x (3.2 x 0.4 + 3.2 x 0.8 + 0.4 x 0.8) over 2 x (1.6 x 0.4 + 1.6 x 0.8 + 0.4 x 0.8) = 8.32 / 4.48.
    expect(factor('machines')).toBeCloseTo(8.32 / 4.48, 10);
  });

  it('takes the hours the maker expects in place of scaled ones; machines and overhead follow them', () => {
    const { likely, pieces } = earlyPrice(given({ asked: { ...sameSize, hours: '60' } }));
    expect(likely.hours.value.toNumber()).toBe(60);
    // 600 + 100 + (1600 + 100 + 400 + 200) x 1.5
    expect(likely.cost.value.toNumber()).toBe(4150);
    expect(pieces[0]?.scaled.ownerHours.value.toNumber()).toBe(63);
  });

  it('needs no size where nothing grows with one', () => {
    const none = { basis: 'none', exponent: 1 } as const;
    const { size: _, ...unmeasured } = piece();
    const scaling = { materials: none };
    const byHours = given({ pieces: [unmeasured], asked: { hours: '80' }, scaling });
    expect(earlyPrice(byHours).likely.hours.value.toNumber()).toBe(80);
    expect(() => earlyPrice(given({ pieces: [unmeasured] }))).toThrow('pieces.0.size is missing');
    expect(() => earlyPrice(given({ asked: {} }))).toThrow('asked.size is missing');
  });

  it('carries an own adjustment with its reason', () => {
    const adjustment = { factor: '1.1', reason: 'curved front' };
    const worked = earlyPrice(given({ adjustment }));
    expect(worked.likely.cost.value.toNumber()).toBe(3300);
    const table = toTable({ price: worked.likely.price }, { withDerivations: true });
    expect(Object.values(table.figures).some((node) => node.source?.text === 'curved front')).toBe(true);
    expect(() => earlyPrice(given({ adjustment: { factor: '1.1', reason: ' ' } }))).toThrow(
      'adjustment.reason is missing',
    );
  });
});

describe('an early price from several past pieces', () => {
  const other = piece({ id: 'chest', name: 'Chest', materials: '1000', hours: '50' });

  it('reaches from the least to the greatest, with the mean as likely', () => {
    const { low, likely, high, spread } = earlyPrice(given({ pieces: [piece(), other] }));
    // 3000 and 3400 at a margin of 25 %: 4000 and 4533.33; mean cost 3200: 4266.67.
    expect([low, likely, high].map((one) => one.price.value.toString())).toEqual([
      '4000',
      '4266.67',
      '4533.33',
    ]);
    expect([low, likely, high].map((one) => one.hours.value.toNumber())).toEqual([40, 45, 50]);
    expect(spread).toBe('past-pieces');
  });

  it('keeps low, likely and high in order, and follows from the leaves shown', () => {
    const amount = fc.integer({ min: 1, max: 5000 });
    const size = fc.record({ length: amount, width: amount, height: amount });
    const past = fc.record({ size, hours: amount, materials: amount, labour: amount, overhead: amount });
    fc.assert(
      fc.property(
        fc.array(past, { minLength: 1, maxLength: 4 }),
        size,
        fc.constantFrom('markup', 'margin', 'markup-by-class', 'hourly-earnings'),
        (rows, asked, kind) => {
          const policies = {
            markup: { kind: 'markup', markup: '0.4' },
            margin: { kind: 'margin', margin: '0.3' },
            'markup-by-class': {
              kind: 'markup-by-class',
              materials: '0.2',
              labour: '0.5',
              machines: '0.1',
              other: '0',
            },
            'hourly-earnings': { kind: 'hourly-earnings', perHour: '40' },
          } as const;
          const { low, likely, high } = earlyPrice(
            given({
              pieces: rows.map((row, index) => piece({ ...row, id: `p${index}`, ownerLabour: row.labour })),
              asked: { size: asked },
              terms: {
                discount: '0.03',
                policy: policies[kind],
                priceStep: { to: '10', direction: 'nearest' },
              },
            }),
          );
          expect(low.price.value.lte(likely.price.value) && likely.price.value.lte(high.price.value)).toBe(
            true,
          );
          expect(low.hours.value.lte(likely.hours.value) && likely.hours.value.lte(high.hours.value)).toBe(
            true,
          );
          const { ids, figures } = toTable({ high: high.price }, { withDerivations: true });
          expect(recalculate(figures).get(ids.high)?.toString()).toBe(high.price.value.toString());
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('what cannot be used', () => {
  it.each([
    [given({ pieces: [] }), 'pieces cannot be 0 past pieces'],
    [given({ pieces: [piece(), piece()] }), 'pieces.1.id is there twice'],
    [
      given({ terms: { discount: '0', policy: { kind: 'entered', price: '900' } } }),
      'terms.policy.kind cannot be "entered"',
    ],
    [
      given({ asked: { size: { length: '0', width: '400', height: '800' } } }),
      'asked.size.length cannot be 0',
    ],
    [
      given({ asked: { ...sameSize, hours: '20' }, pieces: [piece({ hours: '0' })] }),
      'pieces.0.hours cannot be 0',
    ],
    [given({ scaling: { labour: { basis: 'hours', exponent: 1 } } }), 'asked.hours is missing'],
    [given({ scaling: { materials: { basis: 'count', exponent: 1 } } }), 'pieces.0.count is missing'],
    [
      given({ scaling: { materials: { basis: 'area', exponent: '4' } } }),
      'scaling.materials.exponent cannot be 4',
    ],
    [given({ band: { below: '1', above: '0' } }), 'band.below cannot be 1'],
  ])('names the field %#', (input, message) => {
    expect(() => earlyPrice(input)).toThrow(message);
  });
});
