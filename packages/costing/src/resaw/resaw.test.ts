import { NoAnswerError, recalculate, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Resawing, resaw } from './resaw.ts';

// 8/4 stock (50.8 mm) into 1/2 in leaves: own numbers, worked by hand from the formula.
const stock: Resawing = {
  roughThickness: '50.8',
  cleanUp: '3',
  kerf: '3',
  finishedThickness: '12.7',
  planing: '1.5',
};
const saw = (changes: Partial<Resawing>) => resaw({ ...stock, ...changes }, { currency: 'EUR' });

describe('resawing', () => {
  it('counts whole leaves, and the kerf only between them', () => {
    const { sawnLeaf, leaves, thickestSawnLeaf, rest } = saw({});
    expect(sawnLeaf.value.toString()).toBe('14.2');
    expect([leaves.value.toString(), leaves.unit]).toEqual(['2', 'each']);
    expect(thickestSawnLeaf.value.toString()).toBe('22.4');
    expect(rest.value.toString()).toBe('16.4');
  });

  it('takes a fit to the last hundredth as a fit, where binary numbers would lose a leaf', () => {
    // 3 x 14.2 + 2 x 3 + 3 = 51.6; a tenth less is one leaf less.
    expect(saw({ roughThickness: '51.6' }).leaves.value.toNumber()).toBe(3);
    expect(saw({ roughThickness: '51.6' }).rest.value.isZero()).toBe(true);
    expect(saw({ roughThickness: '51.59' }).leaves.value.toNumber()).toBe(2);
  });

  it('says what stock two leaves would need', () => {
    expect(() => saw({ roughThickness: '26' })).toThrow(NoAnswerError);
    expect(() => saw({ roughThickness: '26' })).toThrow('two leaves of 14.2 mm, which need 34.4 mm');
    expect(saw({ roughThickness: '34.4' }).leaves.value.toNumber()).toBe(2);
    expect(() => saw({ kerf: '-1' })).toThrow('kerf cannot be -1');
  });

  it('never asks for more than the stock, and one more leaf never fits', () => {
    const tenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 10);
    fc.assert(
      fc.property(
        tenths(460, 1200),
        tenths(0, 60),
        tenths(0, 40),
        tenths(30, 150),
        tenths(0, 30),
        (...given) => {
          const [roughThickness, cleanUp, kerf, finishedThickness, planing] = given;
          const asked = { roughThickness, cleanUp, kerf, finishedThickness, planing };
          const { rest, leaves, sawnLeaf } = resaw(asked, { currency: 'EUR' });
          expect(rest.value.gte(0)).toBe(true);
          expect(rest.value.lt(sawnLeaf.value.plus(kerf))).toBe(true);
          expect(leaves.value.gte(2)).toBe(true);
        },
      ),
    );
  });

  it('can be worked out again from its leaves', () => {
    const { ids, figures } = toTable({ leaves: saw({}).leaves }, { withDerivations: true });
    expect(recalculate(figures, { 'resaw/rough-thickness': 76.2 }).get(ids.leaves)?.toString()).toBe('4');
  });
});
