import type { ShownPicture } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import { arrangementOf, coveredBy, described, movedTo, without } from './picture-arrangement.ts';

const picture = (sha256: string, isCover = false): ShownPicture => ({
  sha256,
  mediaType: 'image/png',
  width: 4,
  height: 3,
  alternativeText: `View ${sha256}`,
  caption: '',
  isCover,
});
const ITEMS = [picture('a', true), picture('b'), picture('c')];
const order = (items: readonly ShownPicture[]) =>
  items.map(({ sha256, isCover }) => (isCover ? `[${sha256}]` : sha256)).join(' ');

describe('arranging pictures', () => {
  it.each([
    ['a', 2, 'b c [a]'],
    ['c', 0, 'c [a] b'],
    ['b', 1, '[a] b c'],
    ['b', 9, '[a] c b'],
    ['b', -1, 'b [a] c'],
    ['x', 0, '[a] b c'],
  ])('moves %s to place %i', (sha256, place, expected) => {
    const act = movedTo(sha256, place);
    expect(order(act(ITEMS))).toBe(expected);
    expect(order(act(act(ITEMS)))).toBe(expected);
  });

  it('has one cover, the first where the cover is taken out', () => {
    expect(order(coveredBy('c')(ITEMS))).toBe('a b [c]');
    expect(order(coveredBy('x')(ITEMS))).toBe('[a] b c');
    expect(order(without('a')(ITEMS))).toBe('[b] c');
    expect(order(without('b')(ITEMS))).toBe('[a] c');
    expect(without('a')([picture('a', true)])).toEqual([]);
  });

  it('changes the words of one picture only, and sends order, words and cover', () => {
    const act = described({ sha256: 'b', alternativeText: 'From the side', caption: 'Ash' });
    const changed = coveredBy('c')(act(ITEMS));
    expect(arrangementOf(changed)).toEqual({
      items: [
        { sha256: 'a', alternativeText: 'View a', caption: '' },
        { sha256: 'b', alternativeText: 'From the side', caption: 'Ash' },
        { sha256: 'c', alternativeText: 'View c', caption: '' },
      ],
      cover: 'c',
    });
    expect(arrangementOf([])).toEqual({ items: [], cover: null });
  });
});
