import { exampleBill } from '@scantling/contracts';
import type { DrawnDesign } from '@scantling/costing';
import { describe, expect, it } from 'vitest';
import { withText } from '../../../components/edit-grid/edit-column.ts';
import { billDifferences } from './bill-differences.ts';
import { type DraftState, draftOf, inSystem } from './bill-draft.ts';
import type { BillKind } from './bill-fields.ts';
import { parameterColumns, variantColumns } from './parameter-columns.ts';
import { variantPath } from './parameter-fields.ts';
import { freshParameter, withParameterIds } from './parameter-rows.ts';
import { placeWords } from './place-words.ts';
import { readDraft } from './read-draft.ts';
import { withRenamedIds } from './renamed-ids.ts';
import { sizedCells } from './sized-cells.ts';

const RECORDS = {
  materials: ['ASH-5', 'OAK-5', 'GLIDE-20', 'OIL-HARD'].map((id) => ({ id, label: id })),
  grades: [{ id: 'owner', label: 'owner' }],
  machines: [],
};
const [seat] = exampleBill.parts;
if (seat === undefined) throw new Error('the example has no part');
const DESIGN: DrawnDesign = {
  bill: {
    ...exampleBill,
    assemblies: [{ id: 'base', name: 'Base', quantity: 1 }],
    parts: [
      { ...seat, material: 'wood', length: { formula: 'length - 2 * leg' } },
      { ...seat, id: 'rail', name: 'Rail', assembly: 'base', width: { formula: 'leg' } },
    ],
    finishes: exampleBill.finishes.map((step) => ({ ...step, parts: ['seat', 'rail'] })),
  },
  parameters: [
    { id: 'length', label: 'Length', kind: 'length', value: '1200', least: '600', greatest: '2000' },
    { id: 'leg', label: 'Leg', kind: 'length', value: { formula: 'length / 30' } },
    { id: 'wood', label: 'Wood', kind: 'material', value: 'ASH-5', choices: ['ASH-5', 'OAK-5'] },
  ],
  variants: [{ id: 'long', name: 'Long', values: { length: '1350', wood: 'OAK-5' } }],
};
const METRIC = draftOf(DESIGN, 'metric');

function typedParameter(state: DraftState, at: number, column: string, text: string): DraftState {
  const found = parameterColumns(state.unitSystem, RECORDS).find(({ id }) => id === column);
  if (!found) throw new Error(`no column ${column}`);
  const rows = state.parameters.map((row, index) => (index === at ? withText(row, found, text) : row));
  return { ...state, parameters: rows };
}

function typedVariant(state: DraftState, parameter: number, text: string): DraftState {
  const of = state.parameters[parameter];
  const columns = variantColumns(state.parameters, state.variants, state.unitSystem, RECORDS);
  const found = columns.find(({ id }) => of && id === variantPath(of));
  if (!found) throw new Error(`no column for parameter ${parameter}`);
  return { ...state, variants: state.variants.map((row) => withText(row, found, text)) };
}

function withCell(state: DraftState, kind: BillKind, at: number, path: string, text: string): DraftState {
  const rows = state.bill[kind].map((row, index) =>
    index === at ? { ...row, cells: { ...row.cells, [path]: text } } : row,
  );
  return { ...state, bill: { ...state.bill, [kind]: rows } };
}

const told = (state: DraftState): string[] =>
  [...readDraft(state, RECORDS).errors.values()].flatMap((ofRow) =>
    [...ofRow].map(([path, { message, mend }]) => `${path}: ${message} ${mend}`),
  );

describe('parameters and variants in their grids', () => {
  it('read back as they were kept, in either system', () => {
    expect(readDraft(METRIC, RECORDS)).toMatchObject({ whole: DESIGN, count: 0 });
    const inches = inSystem(METRIC, 'imperial');
    expect(inches.parameters[0]?.cells).toMatchObject({ value: '1200 mm', least: '600 mm' });
    expect(readDraft(inSystem(inches, 'metric'), RECORDS).whole).toEqual(DESIGN);
    expect(readDraft(draftOf(DESIGN, 'imperial'), RECORDS).whole).toEqual(DESIGN);
  });

  it('write a value the way of its kind, row by row', () => {
    const state = typedParameter(METRIC, 0, 'value', '4\' 2"');
    expect(state.parameters[0]?.cells.value).toBe('1270');
    expect(typedParameter(METRIC, 2, 'value', 'oak-5').parameters[2]?.cells.value).toBe('OAK-5');
    const variant = typedVariant(METRIC, 0, '140 cm').variants[0];
    expect(Object.values(variant?.cells ?? {})).toContain('1400');
  });

  it('offer no variant cell of what is worked out', () => {
    const headers = variantColumns(METRIC.parameters, METRIC.variants, 'metric', RECORDS);
    expect(headers.map(({ header }) => header)).toEqual(['Name', 'Length, mm', 'Wood']);
  });

  it('make ids that formulas can use, each once', () => {
    const named = ['Leg thickness', 'Leg thickness', 'Mm', 'Höhe', '3 drawers'].map((label) => {
      const row = freshParameter();
      return { ...row, cells: { ...row.cells, label } };
    });
    expect(withParameterIds(named).map(({ cells }) => cells.id)).toEqual([
      'leg_thickness',
      'leg_thickness2',
      'mm_size',
      'hohe',
      'drawers',
    ]);
  });
});

describe('what is to mend', () => {
  it('is told at the cell of the parameter, and not again wherever it is used', () => {
    expect(told(typedParameter(METRIC, 0, 'value', 'long'))).toEqual([
      expect.stringContaining('value: "long" is no length'),
    ]);
    expect(told(typedParameter(METRIC, 0, 'kind', 'colour'))).toHaveLength(1);
    expect(told(typedParameter(METRIC, 1, 'value', '= leg + 1'))).toEqual([
      'value: Goes in a circle: leg -> leg. Give one of them a value of its own.',
    ]);
  });

  it('is told of bounds that a value breaks, as drawn and in a variant', () => {
    expect(told(typedParameter(METRIC, 0, 'greatest', '1300'))).toEqual([
      expect.stringContaining('1350 is more than the greatest, 1300.'),
    ]);
    const inches = typedVariant(inSystem(METRIC, 'imperial'), 0, '80');
    expect(told(inches)[0]).toContain('80" is more than the greatest, 2000 mm.');
    expect(told(typedParameter(METRIC, 0, 'value', '400'))).toEqual([
      'value: 400 is less than the least, 600. Write at least 600, or change the least of the parameter.',
    ]);
  });

  it('is told where a variant holds a formula, or a length has choices', () => {
    expect(told(typedVariant(METRIC, 0, '= 2 * leg'))[0]).toContain('Write the value itself, without "="');
    expect(told(typedParameter(METRIC, 0, 'choices', 'ASH-5'))[0]).toContain('not chosen from materials');
  });

  it('is told of a formula that names what is not there', () => {
    const [message] = told(withCell(METRIC, 'parts', 0, 'length', '= length - foot'));
    expect(message).toContain('"foot", which is no parameter of the design');
  });

  it('is named in words where the API finds it', () => {
    expect(placeWords('parameters.0.least', METRIC)).toBe('Parameters, length, Least');
    expect(placeWords('variants.0.values.length', METRIC)).toBe('Variants, Long, length');
  });
});

describe('sizes beside their formulas', () => {
  const textAt = (state: DraftState, variant: string | null, path: string): string | undefined => {
    const key = state.bill.parts[0]?.key ?? '';
    return sizedCells(readDraft(state, RECORDS), variant, state.unitSystem).get(key)?.get(path)?.text;
  };

  it('are those as drawn or those of a variant', () => {
    expect(textAt(METRIC, null, 'length')).toBe('1120');
    expect(textAt(METRIC, 'long', 'length')).toBe('1260');
    expect(textAt(METRIC, 'long', 'material')).toBe('OAK-5');
    expect(textAt(METRIC, 'none', 'length')).toBe('1120');
  });

  it('stay at their rows while another row cannot be read', () => {
    const broken = withCell(METRIC, 'parts', 0, 'quantity', 'two');
    const rail = broken.bill.parts[1]?.key ?? '';
    const sizes = sizedCells(readDraft(broken, RECORDS), null, 'metric');
    expect(sizes.get(rail)?.get('width')).toEqual({
      text: '40',
      note: 'As drawn: 40 mm = 40 mm, ≈ 1 37/64"',
    });
  });
});

describe('an id that becomes another', () => {
  it('is renamed in formulas, materials and variants', () => {
    const longer = withRenamedIds(METRIC, typedParameter(METRIC, 0, 'id', 'overall'));
    expect(longer.bill.parts[0]?.cells.length).toBe('= overall - 2 * leg');
    expect(longer.parameters[1]?.cells.value).toBe('= overall / 30');
    expect(readDraft(longer, RECORDS).whole?.variants[0]?.values).toEqual({
      overall: '1350',
      wood: 'OAK-5',
    });
    const timber = withRenamedIds(METRIC, typedParameter(METRIC, 2, 'id', 'timber'));
    expect(timber.bill.parts[0]?.cells.material).toBe('timber');
    expect(told(timber)).toEqual([]);
  });

  it('is renamed where parts name an assembly and finishes name parts', () => {
    const base = withRenamedIds(METRIC, withCell(METRIC, 'assemblies', 0, 'id', 'stand'));
    expect(base.bill.parts[1]?.cells.assembly).toBe('stand');
    const part = withRenamedIds(METRIC, withCell(METRIC, 'parts', 0, 'id', 'top'));
    expect(part.bill.finishes[0]?.cells.parts).toBe('top rail');
    expect(told(part)).toEqual([]);
  });

  it('is left and told where another has it, or formulas cannot use it', () => {
    const twice = withRenamedIds(METRIC, typedParameter(METRIC, 0, 'id', 'leg'));
    expect(twice.bill.parts[0]?.cells.length).toBe('= length - 2 * leg');
    expect(told(twice).join(' ')).toContain('"leg" stands twice');
    const spaced = withRenamedIds(METRIC, typedParameter(METRIC, 0, 'id', 'whole length'));
    expect(spaced.bill.parts[0]?.cells.length).toBe('= length - 2 * leg');
    expect(told(spaced).join(' ')).toContain('is no name that a formula can use');
  });
});

it('tells two versions apart by the ids of parameters, not by their rows', () => {
  expect(billDifferences(METRIC, draftOf(DESIGN, 'metric'))).toEqual([]);
  const mine = typedVariant(typedParameter(METRIC, 0, 'least', '700'), 0, '1400');
  expect(billDifferences(mine, draftOf(DESIGN, 'metric'))).toEqual([
    { label: 'Parameters, length, Least', mine: '700', theirs: '600' },
    { label: 'Variants, Long, length', mine: '1400', theirs: '1350' },
  ]);
});
