import { describe, expect, it } from 'vitest';
import { lineUnit, quantityText, unitAfter } from './line-unit.ts';

describe('the unit after a number', () => {
  it.each([
    ['1', 'pieces', 'piece'],
    ['1.000', 'pieces', 'piece'],
    ['2', 'piece', 'pieces'],
    ['0.5', 'hour', 'hours'],
    ['1', 'feet', 'foot'],
    ['3', 'm²', 'm²'],
    ['1', 'dozen', 'dozen'],
    ['1', 'frames', 'frame'],
    ['1', 'boxes', 'box'],
    ['1', 'shelves', 'shelf'],
    ['1', 'glass', 'glass'],
    ['1', 'gross', 'gross'],
    ['1', 'pcs.', 'pcs.'],
    ['6', 'frames', 'frames'],
    ['2', '', ''],
  ])('%s of "%s" is written "%s"', (quantity, unit, written) => {
    expect(unitAfter(quantity, unit)).toBe(written);
  });

  it('is a piece for what comes from a cost sheet', () => {
    expect(lineUnit({ kind: 'cost-sheet', unit: '' })).toBe('piece');
    expect(lineUnit({ kind: 'free', unit: 'set' })).toBe('set');
    expect(lineUnit({ kind: 'delivery', unit: '' })).toBe('');
  });

  it('does not part from its number, and is left out where there is none', () => {
    expect(quantityText('2.50', 'hour')).toBe('2.5\u00a0hours');
    expect(quantityText('4', '')).toBe('4');
  });
});
