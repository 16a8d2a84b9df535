import { describe, expect, it } from 'vitest';
import type { CuttingInstance } from './cutting-instance.ts';
import { readInstance } from './exact-instance.ts';
import { greatestCommonDivisor, readMillionths, writeMillionths } from './exact-length.ts';

const inches: CuttingInstance = {
  kind: '1d',
  kerf: '0.125',
  stock: [
    { id: 'eight-foot', length: 96, cost: '4.50' },
    { id: 'rest', length: '35.4375', cost: 0, available: 1 },
  ],
  parts: [{ id: 'leg', length: '28.015625', quantity: 4 }],
};

describe('lengths in whole millionths', () => {
  it('hold 64ths of an inch exactly, there and back', () => {
    expect(readMillionths('0.015625', { field: 'kerf' })).toBe(15_625);
    expect(writeMillionths(28_015_625)).toBe('28.015625');
    expect(readMillionths(0.1, { field: 'kerf' }) * 3).toBe(readMillionths('0.3', { field: 'kerf' }));
  });

  it.each([
    ['-1', 'cannot be -1'],
    ['1000001', 'cannot be 1000001'],
    ['0.0000001', 'has more than six decimal places: 1e-7'],
    ['wide', 'is no number'],
  ])('refuse %s', (text, reason) => {
    expect(() => readMillionths(text, { field: 'kerf' })).toThrow(expect.objectContaining({ field: 'kerf' }));
    expect(() => readMillionths(text, { field: 'kerf' })).toThrow(reason.replace('1e-7', ''));
  });

  it('share a step', () => {
    expect(greatestCommonDivisor([12, 18, 30])).toBe(6);
    expect(greatestCommonDivisor([])).toBe(1);
  });
});

describe('reading an instance', () => {
  it('grows parts and stock by a kerf, in steps of what the parts share', () => {
    const { parts, stocks, step } = readInstance(inches);
    expect(step).toBe(28_140_625);
    expect(parts[0]?.length).toBe(1);
    // 96.125 holds three grown legs of 28.140625, 35.5625 one.
    expect(stocks.map(({ length }) => length)).toEqual([3, 1]);
  });

  it.each<[string, Partial<CuttingInstance>, string, string]>([
    ['an id twice', { parts: [...inches.parts, ...inches.parts] }, 'parts.1.id', 'cutting-input'],
    [
      'a width on a stick',
      { parts: [{ id: 'leg', length: 2, width: 1, quantity: 1 }] },
      'parts.0.width',
      'cutting-input',
    ],
    ['a trim that leaves nothing', { trim: 48 }, 'trim', 'cutting-input'],
    ['no stock', { stock: [] }, 'stock', 'cutting-input'],
    [
      'half a part',
      { parts: [{ id: 'leg', length: 2, quantity: 1.5 }] },
      'parts.0.quantity',
      'cutting-input',
    ],
    ['half a stage', { stages: 1.5 }, 'stages', 'cutting-input'],
    ['a value that is missing', { objective: 'max-value' }, 'parts.0.value', 'cutting-input'],
    ['a part too long', { parts: [{ id: 'leg', length: 97, quantity: 1 }] }, 'parts.0', 'cutting-impossible'],
  ])('refuses %s', (_, change, field, code) => {
    expect(() => readInstance({ ...inches, ...change })).toThrow(expect.objectContaining({ field, code }));
  });

  it('names the nearest stock that would do', () => {
    const door = { id: 'door', length: 700, width: 1300, quantity: 1 };
    const sheets: CuttingInstance = {
      kind: '2d-guillotine',
      kerf: 3,
      trim: 10,
      stock: [
        { id: 'small', length: 1220, width: 610, cost: 20 },
        { id: 'large', length: 2500, width: 1250, cost: 60 },
      ],
      parts: [door],
    };
    const mendOf = (instance: CuttingInstance) => {
      try {
        readInstance(instance);
      } catch (error) {
        return error instanceof Error ? Reflect.get(error, 'mend') : error;
      }
      return 'none';
    };
    expect(mendOf(sheets)).toBe(
      'Nearest is "large"; stock of at least 2500 x 1320, trims included, would do, or allow the part to be turned.',
    );
    expect(mendOf({ ...sheets, parts: [{ ...door, rotatable: true }] })).toBe('none');
    const stock = [{ id: 'huge', length: 4000, width: 2000, cost: 90, available: 0 }, ...sheets.stock];
    expect(mendOf({ ...sheets, stock })).toBe(
      'It would fit "huge", of which none is available: allow at least one.',
    );
  });
});
