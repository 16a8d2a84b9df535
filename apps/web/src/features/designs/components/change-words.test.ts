import { exampleDesign } from '@scantling/contracts';
import { compareDesigns, type DrawnDesign } from '@scantling/costing';
import { describe, expect, it } from 'vitest';
import { changeLines, variantWords } from './change-words.ts';

const { bill, parameters = [], variants = [] } = exampleDesign;
const before: DrawnDesign = { bill, parameters, variants };
const [part] = bill.parts;
const [operation] = bill.operations;
const [length] = parameters;
const [long] = variants;
if (!part || !operation || !length || !long) throw new Error('the example has one of each');

function lines(after: Partial<DrawnDesign>, system: 'metric' | 'imperial') {
  const changed = { ...before, ...after };
  return changeLines(compareDesigns(before, changed), before, changed, system);
}

describe('what differs between two drawings', () => {
  it('gives sizes in the units of the design, a formula as it is typed', () => {
    const wider = { ...bill, parts: [{ ...part, width: '304.8', length: '1219.2' }] };
    // 304.8 mm are 12 in and 1219.2 mm are 4 ft by the definition of the inch, 25.4 mm (international yard and pound, 1959).
    const width = lines({ bill: wider }, 'imperial').find(({ field }) => field === 'Width');
    expect(width).toMatchObject({ section: 'Parts', row: part.name, after: '12"' });
    const size = lines({ bill: wider }, 'metric').find(({ field }) => field === 'Length');
    expect(size).toMatchObject({ before: '= length', after: '1219.2 mm' });
  });

  it('gives hours with their unit and shares as percent', () => {
    const slower = {
      ...bill,
      parts: [{ ...part, rejectShare: '0.05' }],
      operations: [{ ...operation, setupHours: '1.25' }],
    };
    const [rejects, setup] = lines({ bill: slower }, 'metric');
    expect(rejects).toMatchObject({ field: 'Rejects', before: 'nothing', after: '5 %' });
    expect(setup).toMatchObject({
      field: 'Set-up',
      before: `${operation.setupHours} h`,
      after: '1.25 h',
    });
  });

  it('names parameters by their labels, also in variants', () => {
    const after = {
      parameters: [{ ...length, value: '1250' }],
      variants: [{ ...long, values: { length: '1400' } }],
    };
    expect(lines(after, 'metric')).toMatchObject([
      { section: 'Parameters', row: 'Length', field: 'As drawn', before: '1200 mm', after: '1250 mm' },
      { section: 'Variants', row: 'Long', field: 'Length', before: '1350 mm', after: '1400 mm' },
    ]);
    expect(variantWords(long, parameters, 'metric')).toBe('Length 1350 mm');
  });

  it('writes out a row that came or went', () => {
    const shelf = { ...part, id: 'shelf', name: 'Shelf', length: '800' };
    const [gone, came] = lines({ bill: { ...bill, parts: [...bill.parts, shelf] }, variants: [] }, 'metric');
    expect(gone).toMatchObject({ row: 'Long', field: 'gone', before: 'Length 1350 mm', after: '' });
    expect(came).toMatchObject({ row: 'Shelf', field: 'new', before: '' });
    expect(came?.after).toContain('Length 800 mm');
  });
});
