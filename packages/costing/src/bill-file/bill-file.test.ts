import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_BILL } from '../bill-of-materials/index.ts';
import { checkCodes, type Parameter, plainDesign, type Variant } from '../design-parameters/index.ts';
import { placeProblem } from './place-problem.ts';
import { readBill } from './read-bill.ts';
import { writeBill } from './write-bill.ts';

const numbered = (cells: ReturnType<typeof writeBill>) =>
  cells.map((row, index) => ({ line: index + 2, cells: row }));
const sixtyFourths = fc
  .integer({ min: 1, max: 6400 })
  .map((n) => `${n * 396875}`)
  .map((micro) => String(Number(micro) / 1e6));

describe('a bill as a file', () => {
  it('comes back unchanged in either unit', () => {
    const formula = fc
      .constantFrom('length - 2 * leg', '23 - 5/8', 'max(a, b) / 3')
      .map((text) => ({ formula: text }));
    const parameters: readonly Parameter[] = [
      { id: 'length', label: 'Length', kind: 'length', value: '1219.2', least: '600', greatest: '1999.9' },
      { id: 'leg', label: 'Leg', kind: 'length', value: { formula: 'length / 20' } },
      { id: 'drawers', label: 'Drawers', kind: 'count', value: '4', least: '0' },
      { id: 'wood', label: 'Wood', kind: 'material', value: 'OAK', choices: ['OAK', 'ASH'] },
    ];
    const variants: readonly Variant[] = [
      { id: 'long', name: 'Long', values: { length: '1369.2', wood: 'ASH' } },
      { id: 'plain', name: 'As drawn', values: {} },
    ];
    const part = fc.record(
      {
        id: fc.stringMatching(/^[a-z]{1,6}$/),
        name: fc.stringMatching(/^[A-Z][a-z]{1,9}$/),
        quantity: fc.oneof(fc.integer({ min: 1, max: 9 }), formula),
        material: fc.constant('OAK'),
        length: fc.oneof(sixtyFourths, formula),
        width: sixtyFourths,
        thickness: fc.constantFrom('19', '20.6375', '12.7'),
        grain: fc.constantFrom('length' as const, 'any' as const),
        facesFinished: fc.constantFrom('none' as const, 'all' as const),
        staves: fc.integer({ min: 1, max: 5 }),
        isResawn: fc.boolean(),
        edgeBand: fc.constant({
          material: 'BAND',
          thickness: '2',
          longEdges: 2 as const,
          endEdges: 1 as const,
        }),
        spares: fc.integer({ min: 0, max: 3 }),
        rejectShare: fc.constantFrom('0.05', '0.1'),
      },
      {
        requiredKeys: [
          'id',
          'name',
          'quantity',
          'material',
          'length',
          'width',
          'thickness',
          'grain',
          'facesFinished',
        ],
      },
    );
    const bill = fc.record({
      assemblies: fc.constant([{ id: 'drawer', name: 'Drawer', quantity: 2 }]),
      parts: fc.array(part, { maxLength: 5 }),
      components: fc.constant([
        { id: 'knob', name: 'Knob', assembly: 'drawer', quantity: '1', material: 'KNOB' },
      ]),
      finishes: fc.constant([
        { id: 'oil', name: 'Oil', material: 'OIL', coats: 2, transferEfficiency: '1', parts: ['top', 'leg'] },
      ]),
      consumables: fc.constant([
        { id: 'paper', name: 'Paper', material: 'P120', quantity: '3', per: 'batch' as const },
      ]),
      operations: fc.constant([
        {
          id: 'saw',
          name: 'Saw',
          setupHours: '0.5',
          runHours: '1.25',
          runHoursLow: '1',
          runHoursHigh: { formula: '1.25 + drawers' },
          elapsedHours: '0',
          grade: 'owner',
          machine: 'saw',
          learningRate: '0.9',
        },
      ]),
    });
    fc.assert(
      fc.property(bill, fc.constantFrom('mm' as const, 'in' as const), (written, unit) => {
        const drawing = { bill: written, parameters, variants };
        const read = readBill(numbered(writeBill(drawing, unit)), unit);
        expect([read.drawing, read.problems]).toEqual([drawing, []]);
      }),
    );
  });

  it('names line, column and mend of every unreadable cell, and then takes nothing', () => {
    const { drawing, problems } = readBill(
      [
        {
          line: 2,
          cells: {
            row: 'part',
            id: 'a',
            name: 'A',
            quantity: 'two',
            material: 'OAK',
            length: 'long',
            width: '3',
            thickness: '1',
          },
        },
        { line: 3, cells: { row: 'leg', id: 'b', name: 'B' } },
      ],
      'in',
    );
    expect(drawing).toBeNull();
    expect(problems.map(({ line, column }) => [line, column])).toEqual([
      [2, 'quantity'],
      [2, 'length'],
      [3, 'row'],
    ]);
    for (const { mend } of problems) expect(mend).not.toBe('');
  });

  it('names what a variant sets that is no parameter, and a formula that is none', () => {
    const { problems } = readBill(
      [
        { line: 2, cells: { row: 'variant', id: 'long', name: 'Long', values: 'length = 1350; depth = 3' } },
        { line: 3, cells: { row: 'parameter', id: 'length', name: 'Length', kind: 'length', value: '1200' } },
        { line: 4, cells: { row: 'assembly', id: 'a', name: 'A', quantity: '=' } },
      ],
      'mm',
    );
    expect(problems.map(({ line, column }) => [line, column])).toEqual([
      [4, 'quantity'],
      [2, 'values'],
    ]);
  });

  it('reads an empty file as an empty bill', () => {
    expect(readBill([], 'mm')).toMatchObject({ drawing: plainDesign(EMPTY_BILL), problems: [] });
  });

  it('says what stands on which line, so that an unknown code is named by its place in the file', () => {
    const step = { row: 'operation', id: 'saw', name: 'Saw', grade: 'nobody' };
    const { drawing, lines } = readBill(
      [
        { line: 3, cells: { row: 'assembly', id: 'a', name: 'A' } },
        { line: 7, cells: step },
      ],
      'mm',
    );
    if (drawing === null) throw new Error('the bill was not read');
    const known = { materials: new Set<string>(), grades: new Set<string>(), machines: new Set<string>() };
    expect(checkCodes(drawing, known).map((problem) => placeProblem(problem, lines))).toEqual([
      {
        line: 7,
        column: 'grade',
        message: 'there is no labour grade "nobody"',
        mend: 'enter the labour grade first, or correct the code',
      },
    ]);
  });

  it('takes every row for one kind where the file has no column for it', () => {
    const part = {
      id: 'a',
      name: 'A',
      quantity: '2',
      material: 'OAK',
      length: '3',
      width: '2',
      thickness: '1',
    };
    const { drawing } = readBill([{ line: 2, cells: part }], 'mm', 'part');
    expect(drawing?.bill.parts.map(({ id }) => id)).toEqual(['a']);
  });
});
