import { decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import {
  nominalThicknessMm,
  QUARTERS,
  quarterFor,
  roughThickness,
  surfacedThicknessMm,
  THIN_STOCK,
} from './quarters.ts';

// Engineering ToolBox, "Hardwood Lumber - Dimensions".
describe('rough thicknesses', () => {
  it.each([
    ['4/4', '25.4', '20.6375'],
    ['8/4', '50.8', '44.45'],
    ['16/4', '101.6', '95.25'],
  ])('%s is %s mm rough and %s mm surfaced two sides', (name, rough, surfaced) => {
    const found = roughThickness(name);
    expect(found && nominalThicknessMm(found).toString()).toBe(rough);
    expect(found && surfacedThicknessMm(found).toString()).toBe(surfaced);
  });

  it('are named by their quarters, and lose less on one side than on two', () => {
    for (const { name, nominalIn, surfacedOneSideIn, surfacedTwoSidesIn } of [...THIN_STOCK, ...QUARTERS]) {
      const [over = '', under = ''] = name.split('/');
      expect(decimal(over).div(under).eq(nominalIn)).toBe(true);
      expect(decimal(surfacedTwoSidesIn).lt(surfacedOneSideIn ?? nominalIn)).toBe(true);
    }
  });

  it('reach a part with the thinnest quarter', () => {
    expect(quarterFor('20.6375').name).toBe('4/4');
    expect(quarterFor('20.6376').name).toBe('5/4');
    expect(quarterFor('19', THIN_STOCK.concat(QUARTERS)).name).toBe('4/4');
    expect(quarterFor('10', THIN_STOCK.concat(QUARTERS)).name).toBe('5/8');
  });

  it('say so when nothing is thick enough', () => {
    expect(() => quarterFor('96')).toThrow('laminate the part');
    expect(roughThickness('9/4')).toBeUndefined();
  });
});
