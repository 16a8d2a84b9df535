import { exampleBill } from '@scantling/contracts';
import { type Bill, plainDesign } from '@scantling/costing';
import { describe, expect, it } from 'vitest';
import { withText } from '../../../components/edit-grid/edit-column.ts';
import { billChoices, billColumns } from './bill-columns.ts';
import { billDifferences } from './bill-differences.ts';
import { type DraftState, draftOf, freshRow, inSystem } from './bill-draft.ts';
import type { BillKind } from './bill-fields.ts';
import { type KeptDraft, keepDraft, keptDraft } from './kept-draft.ts';
import { placeWords } from './place-words.ts';
import { readDraft } from './read-draft.ts';
import { withIds } from './row-ids.ts';

const BILL: Bill = {
  ...exampleBill,
  assemblies: [{ id: 'base', name: 'Base', quantity: 1 }],
  parts: exampleBill.parts.map((part) => ({ ...part, length: '600.075', width: '320.000001' })),
};
const RECORDS = {
  materials: ['ASH-5', 'GLIDE-20', 'OIL-HARD'].map((id) => ({ id, label: id, note: `${id} of the yard` })),
  grades: [{ id: 'owner', label: 'owner' }],
  machines: [],
};
const METRIC = draftOf(plainDesign(BILL), 'metric');

function typed(state: DraftState, kind: BillKind, at: number, column: string, text: string): DraftState {
  const choices = billChoices(RECORDS, state.bill);
  const found = billColumns(kind, { system: state.unitSystem, choices, isWhole: true, worked: '' }).find(
    ({ id }) => id === column,
  );
  if (!found) throw new Error(`no column ${column}`);
  const rows = state.bill[kind].map((row, index) => (index === at ? withText(row, found, text) : row));
  return { ...state, bill: { ...state.bill, [kind]: rows } };
}

describe('a bill in its grids', () => {
  it('reads back as it was kept, in either system and after each change of it', () => {
    expect(readDraft(METRIC, RECORDS)).toMatchObject({ whole: { bill: BILL }, count: 0 });
    const inches = inSystem(METRIC, 'imperial');
    expect(inches.bill.parts[0]?.cells).toMatchObject({ length: '23 5/8"', width: '320.000001 mm' });
    expect(readDraft(inches, RECORDS).whole?.bill).toEqual(BILL);
    expect(readDraft(inSystem(inches, 'metric'), RECORDS).whole?.bill).toEqual(BILL);
  });

  it('keeps the length of a row that cannot be read when the system changes', () => {
    const broken = typed(METRIC, 'parts', 0, 'quantity', 'two');
    const mended = typed(inSystem(broken, 'imperial'), 'parts', 0, 'quantity', '1');
    expect(readDraft(mended, RECORDS).whole?.bill.parts[0]?.length).toBe('600.075');
  });

  it('writes a length typed any way in the own way of the design', () => {
    const inches = inSystem(METRIC, 'imperial');
    const { cells } = typed(inches, 'parts', 0, 'length', "1' 11-5/8").bill.parts[0] ?? { cells: {} };
    expect(cells).toMatchObject({ length: '23 5/8"' });
    expect(typed(METRIC, 'parts', 0, 'length', '60 cm').bill.parts[0]?.cells.length).toBe('600');
  });

  it('names every cell to mend by its row and path, the text kept', () => {
    const state = typed(typed(METRIC, 'parts', 0, 'width', '1,250'), 'operations', 0, 'grade', 'helper');
    const { whole, errors, count } = readDraft(state, RECORDS);
    expect(whole).toBeNull();
    expect(count).toBe(2);
    expect(errors.get(state.bill.parts[0]?.key ?? '')?.get('width')?.message).toContain('1,250');
    expect(errors.get(state.bill.operations[0]?.key ?? '')?.get('grade')?.message).toBe(
      'There is no labour grade "helper".',
    );
    expect(state.bill.parts[0]?.cells.width).toBe('1,250');
  });

  it('asks for parts and assemblies of the same bill', () => {
    const state = typed(typed(METRIC, 'finishes', 0, 'parts', 'seat lid'), 'parts', 0, 'assembly', 'Lid');
    const { errors } = readDraft(state, RECORDS);
    expect(errors.get(state.bill.finishes[0]?.key ?? '')?.get('parts')?.message).toContain('"lid"');
    expect(errors.get(state.bill.parts[0]?.key ?? '')?.get('assembly')?.message).toContain('"Lid"');
    expect(
      readDraft(typed(METRIC, 'parts', 0, 'assembly', 'BASE'), RECORDS).whole?.bill.parts[0]?.assembly,
    ).toBe('base');
  });

  it('says nothing of records before it knows them', () => {
    expect(readDraft(METRIC, undefined).whole?.bill).toEqual(BILL);
  });
});

describe('ids', () => {
  const named = (name: string, id = '') => ({ key: `${name}${id}`, cells: { name, id } });
  it('are made of names, each once, and copies get their own', () => {
    const ids = withIds([named('Front leg'), named('Front leg'), named('Rail', 'R1'), named('')]);
    expect(ids.map(({ cells }) => cells.id)).toEqual(['front-leg', 'front-leg-2', 'R1', '']);
    const copy = freshRow('parts', METRIC.bill.parts[0]);
    const [, second] = withIds([...METRIC.bill.parts, copy]);
    expect(second?.cells).toMatchObject({ id: 'seat-2', name: 'Seat', material: 'ASH-5' });
    expect(second?.key).not.toBe(METRIC.bill.parts[0]?.key);
  });
});

describe('two versions of a bill', () => {
  it('differ by value, by row and by order', () => {
    expect(billDifferences(METRIC, draftOf(plainDesign(BILL), 'metric'))).toEqual([]);
    const mine = typed(METRIC, 'parts', 0, 'width', '330');
    const theirs: DraftState = { ...METRIC, bill: { ...METRIC.bill, assemblies: [] } };
    expect(billDifferences(mine, theirs)).toEqual([
      { label: 'Assemblies, base', mine: 'Base', theirs: 'no such row' },
      { label: 'Parts, seat, Width', mine: '330', theirs: '320.000001' },
    ]);
  });

  it('say in words where the API found an error', () => {
    expect(placeWords('bill.parts.0.edgeBand.material', METRIC)).toBe('Parts, seat, Band material');
    expect(placeWords('code', METRIC)).toBe('code');
  });
});

describe('changes that are not saved', () => {
  it('are kept and found again, and left alone where they have another shape', () => {
    const kept = new Map<string, string>();
    const storage: Storage = {
      length: 0,
      clear: () => kept.clear(),
      key: () => null,
      getItem: (key) => kept.get(key) ?? null,
      setItem: (key, text) => void kept.set(key, text),
      removeItem: (key) => void kept.delete(key),
    };
    const about = { code: 'BENCH', name: 'Hall bench', description: '', overallSize: null };
    const draft: KeptDraft = { etag: '"3"', version: 3, about, note: 'wider', state: METRIC };
    keepDraft(storage, 'one', draft);
    expect(keptDraft(storage, 'one')).toEqual(draft);
    expect(keptDraft(storage, 'other')).toBeNull();
    kept.set([...kept.keys()][0] ?? '', '{"etag":1}');
    expect(keptDraft(storage, 'one')).toBeNull();
    keepDraft(storage, 'one', null);
    expect(kept.size).toBe(0);
  });
});
