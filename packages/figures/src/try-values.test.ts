import { decimal } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { divide, roundUp, scale, sum } from './derive.ts';
import type { Figure } from './figure.ts';
import { input } from './input.ts';
import { recalculate } from './recalculation/index.ts';
import { LeafReplacer } from './replace-leaves.ts';
import { entered } from './source.ts';
import { toTable } from './table.ts';
import { tryValues } from './try-values.ts';

const leaf = (key: string, value: string): Figure<'ratio'> =>
  input({ key, label: key, unit: 'ratio', value, source: entered('the record') });

/** Boards in whole packs: need / yield, up to packs of 4, at a price, and a second line that shares the yield. */
function boards(values: { need: string; yield: string; price: string }) {
  const share = leaf('yield', values.yield);
  const bought = roundUp('bought', divide('with waste', leaf('need', values.need), share), leaf('pack', '4'));
  const cost = scale('cost', bought, leaf('price/2026-01-02', values.price));
  return { cost, all: sum('all', 'ratio', [cost, divide('offcuts', leaf('rest', '3'), share)]) };
}
const BOARDS = boards({ need: '9', yield: '0.6', price: '7' });
const table = toTable(BOARDS, { withDerivations: true }).figures;

// No outside source: two ways to the same numbers must agree.
describe('other values tried at leaves', () => {
  it('give what the same figures give when they are made from those values', () => {
    const { table: tried, moved, changed } = tryValues(table, { yield: '0.75', 'price/2026-02-01': '8' });
    const made = boards({ need: '9', yield: '0.75', price: '8' });
    // 9 / 0.75 = 12 boards, three packs of 4, instead of four packs for 15
    expect([tried.cost?.value, tried.all?.value]).toEqual(['96', made.all.value.toString()]);
    expect([moved.get('cost')?.toString(), changed.length]).toEqual(['112', 2]);
    expect(moved.has('need')).toBe(false);
    expect(tried.yield?.source?.text).toBe('tried, instead of 0.6 (the record)');
  });

  it('say which keys are no leaf of the table any more, and leave the table as it is', () => {
    const { table: tried, gone } = tryValues(table, { oak: '3', cost: '4' });
    expect([tried, gone]).toEqual([table, ['oak', 'cost']]);
  });

  it('without an answer are refused', () => {
    expect(() => tryValues(table, { yield: '0' })).toThrow('divided by 0');
    expect(() => tryValues(table, { pack: '0' })).toThrow('bought: there is no such number');
  });
});

describe('replaced leaves', () => {
  const value = fc.integer({ min: 1, max: 10_000 }).map((number) => String(number / 100));

  it('come to what re-calculating the table comes to, for any values', () => {
    fc.assert(
      fc.property(fc.record({ need: value, yield: value, price: value }), (values) => {
        const changes = { need: values.need, yield: values.yield, 'price/2026-01-02': values.price };
        const source = () => entered('own');
        const replacer = new LeafReplacer(
          Object.fromEntries(Object.entries(changes).map(([key, own]) => [key, { value: own, source }])),
        );
        const rebuilt = toTable(replacer.within(BOARDS), { withDerivations: true }).figures;
        for (const [id, expected] of recalculate(table, changes))
          expect(decimal(rebuilt[id]?.value ?? '').eq(expected)).toBe(true);
        expect([...replacer.met].sort()).toEqual(['need', 'price', 'yield']);
      }),
    );
  });

  it('keep what does not rest on them the same object, and shared inputs shared', () => {
    const other = sum('other', 'ratio', [leaf('a', '1'), leaf('b', '2')]);
    const source = () => entered('own');
    const replacer = new LeafReplacer({ yield: { value: '0.9', source } });
    const rebuilt = replacer.within({ ...BOARDS, list: [other], name: 'x', at: null });
    expect(rebuilt.list[0]).toBe(other);
    expect(rebuilt.cost).not.toBe(BOARDS.cost);
    expect(replacer.within(BOARDS).cost).toBe(rebuilt.cost);
    expect(new LeafReplacer({}).within(BOARDS)).toBe(BOARDS);
  });
});
