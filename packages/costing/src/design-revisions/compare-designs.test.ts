import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_BILL, type Part } from '../bill-of-materials/index.ts';
import type { DrawnDesign } from '../design-parameters/index.ts';
import { compareDesigns } from './compare-designs.ts';

const leg: Part = {
  id: 'leg',
  name: 'Leg',
  quantity: 4,
  material: 'OAK',
  length: '400',
  width: '50',
  thickness: '50',
  grain: 'length',
  facesFinished: 'all',
};
const design: DrawnDesign = {
  bill: { ...EMPTY_BILL, parts: [leg, { ...leg, id: 'rail', name: 'Rail' }] },
  parameters: [{ id: 'length', label: 'Length', kind: 'length', value: '1200' }],
  variants: [{ id: 'long', name: 'Long', values: { length: '1350' } }],
};

describe('two drawings of a design', () => {
  it('are told apart by row and field', () => {
    const after: DrawnDesign = {
      bill: {
        ...design.bill,
        parts: [
          {
            ...leg,
            name: 'Front leg',
            length: { formula: 'length / 3' },
            edgeBand: { material: 'BAND', thickness: '1', longEdges: 2, endEdges: 0 },
          },
          { ...leg, id: 'top', name: 'Top' },
        ],
      },
      parameters: [{ id: 'length', label: 'Length', kind: 'length', value: '1250' }],
      variants: [{ id: 'long', name: 'Long', values: { length: '1400' } }],
    };
    expect(compareDesigns(design, after)).toEqual([
      {
        section: 'parameters',
        id: 'length',
        name: 'Length',
        kind: 'changed',
        fields: [{ field: 'value', before: '1200', after: '1250' }],
      },
      {
        section: 'variants',
        id: 'long',
        name: 'Long',
        kind: 'changed',
        fields: [{ field: 'values.length', before: '1350', after: '1400' }],
      },
      {
        section: 'parts',
        id: 'leg',
        name: 'Front leg',
        kind: 'changed',
        fields: [
          { field: 'name', before: 'Leg', after: 'Front leg' },
          { field: 'length', before: '400', after: '=length / 3' },
          { field: 'edgeBand.material', before: null, after: 'BAND' },
          { field: 'edgeBand.thickness', before: null, after: '1' },
          { field: 'edgeBand.longEdges', before: null, after: '2' },
          { field: 'edgeBand.endEdges', before: null, after: '0' },
        ],
      },
      { section: 'parts', id: 'top', name: 'Top', kind: 'added', fields: [] },
      { section: 'parts', id: 'rail', name: 'Rail', kind: 'removed', fields: [] },
    ]);
  });

  it('have no difference from themselves, and the same one backwards', () => {
    expect(compareDesigns(design, design)).toEqual([]);
    const part = fc.record({
      id: fc.constantFrom('a', 'b', 'c'),
      length: fc.constantFrom('1', '2'),
      quantity: fc.integer({ min: 1, max: 2 }),
    });
    const parts = fc
      .uniqueArray(part, { selector: ({ id }) => id, maxLength: 3 })
      .map((rows) => rows.map((row) => ({ ...leg, ...row })));
    const turned = { added: 'removed', removed: 'added', changed: 'changed' } as const;
    const key = ({ section, id, kind, fields }: ReturnType<typeof compareDesigns>[number]) =>
      JSON.stringify([section, id, kind, fields]);
    fc.assert(
      fc.property(parts, parts, (one, other) => {
        const drawn = (rows: readonly Part[]) => ({ ...design, bill: { ...EMPTY_BILL, parts: rows } });
        const there = compareDesigns(drawn(one), drawn(other)).map(key).toSorted();
        const back = compareDesigns(drawn(other), drawn(one)).map((change) => {
          const fields = change.fields.map(({ field, before, after }) => ({
            field,
            before: after,
            after: before,
          }));
          return key({ ...change, kind: turned[change.kind], fields });
        });
        expect(there).toEqual(back.toSorted());
      }),
    );
  });
});
