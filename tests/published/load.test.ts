import { describe, expect, it } from 'vitest';
import { differences, loadPublished, near, type PublishedCheck } from './load.ts';

// No outside source: these hold the loader itself, so that a check cannot pass unread.
describe('published checks', () => {
  it('all belong to a suite that runs them', () => {
    const strays = loadPublished().filter(
      (check) => !/^(units|money|costing|quoting)\//.test(check.function),
    );
    expect(strays.map((check) => `${check.id}: ${check.function}`)).toEqual([]);
  });

  const check: PublishedCheck = {
    id: 'x',
    title: 'x',
    source: 'x',
    status: 'x',
    function: 'units/x',
    inputs: {},
    expected: { a: 1, list: ['2', 3], part: { b: 'oak' } },
    tolerance: '0.5',
  };

  it('agree within the tolerance', () => {
    expect(differences(check, { a: '1.5', list: [2, 3], part: { b: 'oak' }, more: 1 })).toEqual([]);
    expect(near('0.3', '0.1', '0.2')).toBe(true);
    expect(near('0.3', '0.1', '0.1999')).toBe(false);
  });

  it.each([
    [{ a: '1.51', list: [2, 3], part: { b: 'oak' } }, 'a: 1.51'],
    [{ a: 1, list: [2], part: { b: 'oak' } }, 'list: 1 values, not 2'],
    [{ a: 1, list: [2, undefined], part: { b: 'oak' } }, 'list[1]'],
    [{ a: 1, list: [2, 3], part: { b: 'ash' } }, 'part.b: ash'],
    [{ a: 1, list: [2, 3], part: {} }, 'part.b: undefined'],
    [{ list: [2, 3], part: { b: 'oak' } }, 'a: not answered'],
  ])('differ otherwise', (actual, line) => {
    const found = differences(check, actual);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(line);
  });
});
