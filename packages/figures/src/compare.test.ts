import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareLeaves } from './compare.ts';
import { sum } from './derive.ts';
import { input } from './input.ts';
import { entered, type Source } from './source.ts';
import { toTable } from './table.ts';

function tableOf(values: Readonly<Record<string, string>>, source: Source = entered()) {
  const parts = Object.entries(values).map(([key, value]) =>
    input({ key, label: key, unit: 'money', value, currency: 'EUR', source }),
  );
  return toTable({ total: sum('total', 'money', parts, 'EUR') }, { withDerivations: true }).figures;
}

// No outside source: these hold what "leaf by leaf" means here.
describe('compareLeaves', () => {
  it('names what changed, came and went, with old and new', () => {
    const changes = compareLeaves(
      tableOf({ oak: '10', glue: '2', screws: '4.0', 'exchange-rate/EUR/2026-01-02': '1.1' }),
      tableOf({ oak: '12', screws: '4', oil: '3', 'exchange-rate/EUR/2026-03-02': '1.2' }),
    );
    const words = changes.map(({ kind, key, old, now }) => `${key} ${kind} ${old?.value} ${now?.value}`);
    expect(words).toEqual([
      'exchange-rate/EUR changed 1.1 1.2',
      'glue gone 2 undefined',
      'oak changed 10 12',
      'oil added undefined 3',
    ]);
  });

  it('finds nothing where only the source is another', () => {
    expect(compareLeaves(tableOf({ oak: '10' }), tableOf({ oak: '10' }, entered('by phone')))).toEqual([]);
  });

  it('turned round, says the opposite', () => {
    const values = fc.dictionary(fc.stringMatching(/^[a-z]{1,3}$/), fc.integer().map(String));
    fc.assert(
      fc.property(values, values, (left, right) => {
        const there = compareLeaves(tableOf(left), tableOf(right));
        const back = compareLeaves(tableOf(right), tableOf(left));
        const turned = { changed: 'changed', added: 'gone', gone: 'added' } as const;
        expect(back.map(({ kind, key }) => [turned[kind], key])).toEqual(
          there.map(({ kind, key }) => [kind, key]),
        );
        expect(compareLeaves(tableOf(left), tableOf(left))).toEqual([]);
      }),
    );
  });
});
