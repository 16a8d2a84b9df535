import fc from 'fast-check';
import { expect, it } from 'vitest';
import { areaBetween, isInArea, moved } from './grid-position.ts';

const size = { rows: 40, columns: 5 };

// Keys after the ARIA Authoring Practices, grid pattern (data grids).
it('moves as the grid pattern says', () => {
  const from = { row: 20, column: 2 };
  expect(moved(from, 'ArrowRight', false, size)).toEqual({ row: 20, column: 3 });
  expect(moved(from, 'Home', false, size)).toEqual({ row: 20, column: 0 });
  expect(moved(from, 'End', true, size)).toEqual({ row: 39, column: 4 });
  expect(moved({ row: 0, column: 2 }, 'ArrowUp', false, size)).toEqual({ row: -1, column: 2 });
  expect(moved(from, 'a', false, size)).toBeNull();
});

it('never leaves the grid', () => {
  const keys = fc.constantFrom(
    'ArrowUp',
    'ArrowDown',
    'ArrowLeft',
    'ArrowRight',
    'PageUp',
    'PageDown',
    'Home',
    'End',
  );
  fc.assert(
    fc.property(fc.array(keys, { maxLength: 60 }), fc.boolean(), (pressed, isControl) => {
      let at = { row: 0, column: 0 };
      for (const key of pressed) at = moved(at, key, isControl, size) ?? at;
      expect(at.row).toBeGreaterThanOrEqual(-1);
      expect(at.row).toBeLessThan(size.rows);
      expect(at.column).toBeGreaterThanOrEqual(0);
      expect(at.column).toBeLessThan(size.columns);
    }),
  );
});

it('spans the same area from any corner', () => {
  const area = areaBetween({ row: 5, column: 1 }, { row: 2, column: 3 });
  expect(area).toEqual(areaBetween({ row: 2, column: 3 }, { row: 5, column: 1 }));
  expect(isInArea(area, 3, 2)).toBe(true);
  expect(isInArea(area, 3, 4)).toBe(false);
  expect(areaBetween({ row: -1, column: 0 }, { row: 1, column: 0 }).top).toBe(0);
});
