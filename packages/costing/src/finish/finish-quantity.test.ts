import { leaves } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FinishApplication, finishQuantity, OIL_SOAKED_RAGS } from './index.ts';

const varnish: FinishApplication = {
  id: 'varnish',
  name: 'Varnish',
  system: 'metric',
  area: 10,
  coats: 2,
  isWipedOil: false,
  by: { kind: 'film', volumeSolids: '0.4', transferEfficiency: '0.5', dryFilmPerCoat: 40 },
};
const context = { currency: 'EUR' } as const;
const quantity = (changes: Partial<FinishApplication>) => finishQuantity({ ...varnish, ...changes }, context);

describe('the quantity of a finish', () => {
  it('follows the film in litres', () => {
    // By hand: 10 m2 x 2 x 40 um / (1000 x 0.4 x 0.5) = 4 l; a wet coat is 40 / 0.4 = 100 um.
    const made = quantity({});
    expect([made.quantity.value.toString(), made.quantity.unit]).toEqual(['4', 'l']);
    expect([made.wetFilm?.value.toString(), made.wetFilm?.unit]).toEqual(['100', 'um']);
    expect(made.litres.value.toString()).toBe('4');
    const keys = leaves([made.quantity]).map((leaf) => (leaf.how.kind === 'input' ? leaf.how.key : ''));
    expect(keys).toEqual(expect.arrayContaining(['finish/varnish/area', 'finish/varnish/volume-solids']));
  });

  it('agrees in US and metric measure for the same film', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 1, max: 80 }),
        (area, solids, efficiency, tenths) => {
          const film = {
            kind: 'film',
            volumeSolids: solids / 100,
            transferEfficiency: efficiency / 100,
          } as const;
          const us = quantity({ system: 'us', area, by: { ...film, dryFilmPerCoat: tenths / 10 } });
          const metres = us.litres.value.times(0).plus(area).times('0.09290304');
          const um = us.litres.value.times(0).plus(tenths).times('2.54');
          const metric = quantity({ area: metres, by: { ...film, dryFilmPerCoat: um } });
          expect(us.litres.value.minus(metric.litres.value).abs().lt('1e-20')).toBe(true);
        },
      ),
    );
  });

  it('divides a coverage by transfer efficiency only when it is theoretical', () => {
    const inUse = { kind: 'coverage', areaPerUnit: 12, isTheoretical: false } as const;
    expect(quantity({ by: inUse }).quantity.value.toNumber()).toBeCloseTo(20 / 12, 12);
    const theoretical = { ...inUse, isTheoretical: true, transferEfficiency: '0.5' };
    expect(quantity({ by: theoretical }).quantity.value.toNumber()).toBeCloseTo(20 / 6, 12);
    expect(() => quantity({ by: { ...inUse, isTheoretical: true } })).toThrow(
      'transferEfficiency is missing',
    );
    expect(() => quantity({ by: { ...theoretical, isTheoretical: false } })).toThrow('counts it already');
  });

  it('adds the rest that each mixed batch loses', () => {
    const mixed = quantity({ mixing: { batches: 2, restPerBatch: '0.05' } });
    expect([mixed.applied.value.toString(), mixed.rest?.value.toString()]).toEqual(['4', '0.1']);
    expect(mixed.quantity.value.toString()).toBe('4.1');
  });

  it('takes wiped oils by coverage only, and says how their rags must be kept', () => {
    expect(() => quantity({ isWipedOil: true })).toThrow('by is a film, which a wiped oil does not build');
    const oil = quantity({
      isWipedOil: true,
      by: { kind: 'coverage', areaPerUnit: 15, isTheoretical: false },
    });
    expect(oil.caution).toBe(OIL_SOAKED_RAGS);
    expect(oil.caution?.text).toContain('covered metal can');
    expect(quantity({}).caution).toBeNull();
  });

  it('names what is wrong', () => {
    expect(() => quantity({ coats: '1.5' })).toThrow('coats cannot be 1.5: enter a whole number above 0');
    const percent = { kind: 'film', volumeSolids: 40, transferEfficiency: 1, dryFilmPerCoat: 40 } as const;
    expect(() => quantity({ by: percent })).toThrow('volumeSolids cannot be 40');
  });
});
