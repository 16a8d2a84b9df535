import { describe, expect, it } from 'vitest';
import { EMPTY_BILL } from './bill.ts';
import { compareBills } from './compare-bills.ts';

const leg = {
  id: 'leg',
  name: 'Leg',
  quantity: 4,
  material: 'ASH',
  length: '430',
  width: '45',
  thickness: '45',
  grain: 'length',
  facesFinished: 'all',
} as const;

describe('a bill compared with the one before it', () => {
  it('tells new, changed, gone and unchanged rows, and which values differ', () => {
    const top = { ...leg, id: 'top', name: 'Top', quantity: 1 };
    const before = { ...EMPTY_BILL, parts: [leg, top] };
    const after = {
      ...EMPTY_BILL,
      parts: [
        { ...leg, length: '450', staves: 2 },
        { ...leg, id: 'rail', name: 'Rail' },
      ],
      components: [{ id: 'leg', name: 'Foot pad', quantity: '4', material: 'PAD' }],
    };
    expect(compareBills(before, after)).toEqual([
      { kind: 'parts', id: 'leg', name: 'Leg', change: 'changed', fields: ['length', 'staves'] },
      { kind: 'parts', id: 'rail', name: 'Rail', change: 'new', fields: [] },
      { kind: 'parts', id: 'top', name: 'Top', change: 'gone', fields: [] },
      { kind: 'components', id: 'leg', name: 'Foot pad', change: 'new', fields: [] },
    ]);
    expect(compareBills(before, before).map(({ change }) => change)).toEqual(['unchanged', 'unchanged']);
  });

  it('does not mind the order in which values stand', () => {
    const band = { material: 'B', thickness: '2', longEdges: 2, endEdges: 0 } as const;
    const turned = { endEdges: 0, longEdges: 2, thickness: '2', material: 'B' } as const;
    const compared = compareBills(
      { ...EMPTY_BILL, parts: [{ ...leg, edgeBand: band }] },
      { ...EMPTY_BILL, parts: [{ edgeBand: turned, ...leg }] },
    );
    expect(compared[0]?.change).toBe('unchanged');
  });
});
