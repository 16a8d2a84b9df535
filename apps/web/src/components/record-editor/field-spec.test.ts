import { describe, expect, it } from 'vitest';
import { differences, type GroupSpec, shownNames } from './field-spec.ts';

const GROUPS: readonly GroupSpec[] = [
  {
    fields: [
      { name: 'code', label: 'Code', kind: 'text' },
      { name: 'rate', label: 'Rate', kind: 'decimal', isShown: (values) => values.hasRate === true },
      { name: 'hasRate', label: 'Has a rate', kind: 'check' },
      {
        name: 'kind',
        label: 'Kind',
        kind: 'choice',
        choices: [
          { id: 'a', label: 'the first' },
          { id: 'b', label: 'the second' },
        ],
      },
      {
        name: 'cutters',
        label: 'Cutters',
        kind: 'rows',
        addText: 'Add',
        fresh: { price: '' },
        cells: [{ name: 'price', label: 'Price', kind: 'decimal' }],
      },
    ],
  },
];

describe('the fields of a form', () => {
  it('names those that stand on it, rows by their place', () => {
    const cutters = [{ price: '1' }, { price: '2' }];
    expect(shownNames(GROUPS, { hasRate: false, cutters })).toEqual([
      'code',
      'hasRate',
      'kind',
      'cutters.0.price',
      'cutters.1.price',
    ]);
    expect(shownNames(GROUPS, { hasRate: true })).toContain('rate');
  });

  it('tells in words where two versions differ', () => {
    const mine = { code: 'A', hasRate: true, kind: 'a', cutters: [] };
    const theirs = { code: '', hasRate: true, kind: 'b', cutters: [{ price: '1' }] };
    expect(differences(GROUPS, mine, theirs)).toEqual([
      { label: 'Code', mine: 'A', theirs: 'nothing' },
      { label: 'Kind', mine: 'the first', theirs: 'the second' },
      { label: 'Cutters', mine: '0 rows', theirs: '1 rows' },
    ]);
    expect(differences(GROUPS, mine, mine)).toEqual([]);
  });
});
