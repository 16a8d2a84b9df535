import { FigureTableBuilder, recalculate, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_BILL } from '../bill-of-materials/index.ts';
import { costSheet } from '../cost-sheet/index.ts';
import { sampleBill, sampleOak, sampleOffer, sampleSheet } from '../cost-sheet/sample-sheet.ts';
import { CostingInputError } from '../input-error.ts';
import type { DrawnDesign } from './drawn-bill.ts';
import type { Parameter } from './parameter.ts';
import { checkDesign, requireSized, sizeDesign } from './size-design.ts';

const formula = (text: string) => ({ formula: text });
const length: Parameter = { id: 'length', label: 'Length', kind: 'length', value: '1200' };
const drawers: Parameter = { id: 'drawers', label: 'Drawers', kind: 'count', value: '4', greatest: '6' };
const wood: Parameter = {
  id: 'wood',
  label: 'Wood',
  kind: 'material',
  value: 'OAK-4',
  choices: ['OAK-4', 'ASH-4'],
};
const part = {
  id: 'top',
  name: 'Top',
  quantity: 1,
  material: 'wood',
  length: formula('length - 2 * in(1/2)'),
  width: '300',
  thickness: '19',
  grain: 'length',
  facesFinished: 'all',
} as const;
const design: DrawnDesign = {
  bill: {
    ...EMPTY_BILL,
    assemblies: [{ id: 'drawer', name: 'Drawer', quantity: formula('drawers') }],
    parts: [
      part,
      { ...part, id: 'front', name: 'Front', assembly: 'drawer', length: formula('(length - 40) / 3') },
      { ...part, id: 'rail', name: 'Rail', quantity: formula('drawers - 1'), length: formula('length') },
    ],
    components: [{ id: 'pull', name: 'Pull', assembly: 'drawer', quantity: '2', material: 'PULL' }],
    operations: [
      {
        id: 'make',
        name: 'Make',
        setupHours: '1',
        runHours: formula('2 + 0.75 * drawers'),
        elapsedHours: '0',
        grade: 'owner',
      },
      {
        id: 'fit',
        name: 'Fit drawers',
        assembly: 'drawer',
        setupHours: '0',
        runHours: formula('0.5 * drawers'),
        elapsedHours: '0',
        grade: 'owner',
      },
    ],
  },
  parameters: [length, drawers, wood],
  variants: [{ id: 'open', name: 'Open', values: { drawers: '0', wood: 'ASH-4' } }],
};
const problemsOf = (changes: Partial<DrawnDesign>, choice = {}) =>
  sizeDesign({ ...design, ...changes }, choice, 'mm').problems;

describe('a design under a choice', () => {
  it('fills every formula and names the wood', () => {
    const { bill } = requireSized(design, {}, 'mm');
    expect(bill.parts.map((one) => [one.id, one.quantity, one.length, one.material])).toEqual([
      ['top', 1, '1174.6', 'OAK-4'],
      ['front', 1, '386.666667', 'OAK-4'],
      ['rail', 3, '1200', 'OAK-4'],
    ]);
    expect(bill.assemblies[0]?.quantity).toBe(4);
    expect(bill.operations.map(({ runHours }) => runHours)).toEqual(['5', '2']);
  });

  it('takes a variant, and values over it', () => {
    const chosen = requireSized(design, { variant: 'open', values: { drawers: '5', length: '1350' } }, 'mm');
    expect(chosen.bill.parts.map((one) => [one.quantity, one.length, one.material])).toEqual([
      [1, '1324.6', 'ASH-4'],
      [1, '436.666667', 'ASH-4'],
      [4, '1350', 'ASH-4'],
    ]);
    expect(chosen.parameters.map(({ value }) => value)).toEqual(['1350', '5', 'ASH-4']);
  });

  it('leaves out what comes to 0, with all that belongs to a left-out assembly', () => {
    const bill = { ...design.bill, parts: design.bill.parts.slice(0, 2) };
    const { bill: sized, kept } = requireSized({ ...design, bill }, { variant: 'open' }, 'mm');
    expect(sized.parts.map(({ id }) => id)).toEqual(['top']);
    expect([sized.assemblies, sized.components]).toEqual([[], []]);
    expect(sized.operations.map(({ id }) => id)).toEqual(['make']);
    expect(kept.operations).toEqual([0]);
  });

  it('leaves a bill without parameters as it is', () => {
    const sized = requireSized({ bill: sampleBill, parameters: [], variants: [] }, {}, 'mm');
    expect(sized.bill).toEqual(sampleBill);
    expect(sized.figures.size).toBe(0);
  });

  it('names the field of every problem, all at once', () => {
    const faulty: DrawnDesign = {
      ...design,
      bill: {
        ...design.bill,
        parts: [
          { ...part, length: formula('lenght - 40') },
          { ...part, id: 'b', width: formula('length * length') },
          { ...part, id: 'c', quantity: formula('drawers / 3') },
          { ...part, id: 'd', thickness: formula('length - 1300') },
          { ...part, id: 'e', length: formula('drawers') },
          {
            ...part,
            id: 'f',
            edgeBand: { material: 'X', thickness: formula(''), longEdges: 1, endEdges: 0 },
          },
        ],
      },
    };
    expect(sizeDesign(faulty, {}, 'mm').problems.map(({ field }) => field)).toEqual([
      'bill.parts.0.length',
      'bill.parts.1.width',
      'bill.parts.2.quantity',
      'bill.parts.3.thickness',
      'bill.parts.4.length',
      'bill.parts.5.edgeBand.thickness',
    ]);
    expect(() => requireSized(faulty, {}, 'mm')).toThrow(CostingInputError);
  });

  it('names circles, taken names, values out of bounds and what is not there', () => {
    const round = (id: string, value: string): Parameter => ({
      ...length,
      id,
      label: id,
      value: formula(value),
    });
    const circle = problemsOf({ parameters: [...design.parameters, round('a', 'b'), round('b', 'a * 2')] });
    expect(circle.map(({ field, message }) => [field, message])).toEqual([
      ['parameters.4.value', 'goes in a circle: a -> b -> a'],
    ]);
    const fields = (changes: Partial<DrawnDesign>, choice = {}) =>
      problemsOf(changes, choice).map(({ field }) => field);
    expect(fields({ parameters: [...design.parameters, { ...length, id: 'in' }] })).toEqual([
      'parameters.3.id',
    ]);
    expect(fields({ parameters: [...design.parameters, length] })).toEqual(['parameters.3.id']);
    expect(fields({}, { values: { drawers: '7' } })).toEqual(['parameterValues.drawers']);
    expect(fields({}, { values: { drawers: '2.5' } })).toEqual(['parameterValues.drawers']);
    expect(fields({}, { values: { wood: 'ELM-4' } })).toEqual(['parameterValues.wood']);
    expect(fields({}, { values: { depth: '3' } })).toEqual(['parameterValues.depth']);
    expect(fields({}, { variant: 'tall' })).toEqual(['variant']);
  });

  it('is checked in each of its variants', () => {
    expect(checkDesign(design, 'mm').map(({ field, message }) => [field, message])).toEqual([
      ['bill.parts.2.quantity', 'comes to -1, where at least 0 is wanted (variant Open)'],
    ]);
  });

  it('survives a long chain of parameters, and a full one', () => {
    const parameters = Array.from(
      { length: 40 },
      (_, at): Parameter => ({
        id: `p${at}`,
        label: `p${at}`,
        kind: 'length',
        value: at === 0 ? '1' : formula(`${'max(1,'.repeat(19)}p${at - 1}${')'.repeat(19)}`),
      }),
    );
    const chain = { bill: EMPTY_BILL, parameters, variants: [] };
    const { parameters: sized } = requireSized(chain, {}, 'mm');
    const figure = sized.at(-1)?.figure;
    if (!figure) throw new Error('the last parameter has no figure');
    expect(figure.value.toString()).toBe('1');
    expect(new FigureTableBuilder({ withDerivations: true }).add('last', figure)).toBe('last');
  });
});

describe('a cost sheet of a drawn design', () => {
  const ash = { ...sampleOak, code: 'ASH-4', name: 'Ash 4/4', offers: [sampleOffer({ code: 'ASH-4' })] };
  const pull = {
    code: 'PULL',
    name: 'Pull',
    form: 'each' as const,
    offers: [sampleOffer({ code: 'PULL', unit: 'each' })],
  };
  const sheet = { ...sampleSheet, ...design, materials: [...sampleSheet.materials, ash, pull] };

  it('costs the same as the plain bill it comes to', () => {
    const { bill } = requireSized(design, {}, 'mm');
    const plain = costSheet({ ...sheet, bill, parameters: [], variants: [] });
    const drawn = costSheet(sheet);
    const amounts = ({ columns }: typeof plain) =>
      columns.map(({ classes, price }) => [
        classes.primeCost.value.toString(),
        classes.costOfProduction.value.toString(),
        price.netPrice.value.toString(),
      ]);
    expect(amounts(drawn)).toEqual(amounts(plain));
  });

  it('follows the length: its working goes from the cost through the formula to the parameter', () => {
    const [column] = costSheet(sheet).columns;
    const [longer] = costSheet({ ...sheet, parameterValues: { length: '1350' } }).columns;
    if (!column || !longer) throw new Error('a column was asked for');
    const { ids, figures } = toTable({ cost: column.classes.primeCost }, { withDerivations: true });
    expect(figures['parameter/length']?.value).toBe('1200');
    const changed = recalculate(figures, { 'parameter/length': '1350' }).get(ids.cost);
    expect(changed?.toDecimalPlaces(6)).toEqual(longer.classes.primeCost.value.toDecimalPlaces(6));
    expect(longer.classes.primeCost.value.gt(column.classes.primeCost.value)).toBe(true);
  });

  it('names rows by their place in the drawn bill, whatever was left out', () => {
    const bill = {
      ...design.bill,
      parts: [
        { ...part, id: 'gone', quantity: formula('drawers - 4') },
        { ...part, material: 'ELM-4' },
      ],
    };
    try {
      costSheet({ ...sheet, bill });
    } catch (error) {
      expect(error instanceof CostingInputError && error.field).toBe('bill.parts.1.material');
      return;
    }
    throw new Error('a bill with an unknown material was costed');
  });

  it('moves only one way: a longer piece never costs less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 200, max: 2000 }), fc.integer({ min: 1, max: 500 }), (mm, more) => {
        const cost = (value: number) =>
          costSheet({ ...sheet, parameterValues: { length: `${value}` } }).columns[0]?.classes.primeCost
            .value;
        const [short, long] = [cost(mm), cost(mm + more)];
        expect(short && long?.gte(short)).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});
