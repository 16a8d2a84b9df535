import { exampleDraft } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import { withText } from '../../../components/edit-grid/edit-column.ts';
import { pasted } from '../../../components/edit-grid/paste-block.ts';
import { withFollowing } from './follow-cells.ts';
import { cell, draftLine, freshLine, type LineForm, lineForm, linesOf } from './line-cells.ts';
import { lineColumns, originChoices } from './line-columns.ts';
import { lineFigures } from './line-figures.tsx';
import { cellOfField, lineErrors, lineProblems, placedAtLines } from './line-problems.ts';

const BENCH = '0193f6a0-7c11-7000-8000-000000000020';
const STOOL = '0193f6a0-7c11-7000-8000-000000000021';
const SHEETS = [
  { id: BENCH, label: 'Hall bench', note: 'Bench', designName: 'Bench on turned legs', pieces: 2 },
  { id: STOOL, label: 'Hall bench', note: 'Stool', designName: 'Stool', pieces: 1 },
];
const FORM = { currency: 'EUR', priceMode: 'exclusive', taxes: exampleDraft.taxes } as const;
const KNOWN = { taxes: exampleDraft.taxes, sheets: SHEETS };
const further = { shown: () => '', render: () => '' };
const columnsOf = (hasGroups: boolean) =>
  lineColumns({
    form: FORM,
    origins: originChoices(SHEETS),
    hasGroups,
    further,
    figures: lineFigures(undefined),
  });
const COLUMNS = columnsOf(true);
const LINES = exampleDraft.lines.map(lineForm);

function typed(lines: readonly LineForm[], at: number, column: string, text: string): readonly LineForm[] {
  const target = COLUMNS.find(({ id }) => id === column);
  if (target === undefined) throw new Error(`no column ${column}`);
  const rows = lines.map((line, place) => (place === at ? withText(line, target, text) : line));
  return withFollowing(linesOf(rows), lines, SHEETS);
}

const faults = (line: LineForm | undefined): string[] =>
  line === undefined
    ? ['no line']
    : lineProblems(line, KNOWN).map(([name, { message }]) => `${name}: ${message}`);

describe('lines in their grid', () => {
  it('say the same draft as they were made from, alternates included', () => {
    const alternate = {
      ...exampleDraft.lines[1],
      id: 'felt',
      choice: { kind: 'alternate', group: 'Seat', isStandard: true },
    } as (typeof exampleDraft.lines)[number];
    const lines = [...exampleDraft.lines, alternate];
    expect(lines.map(lineForm).map(draftLine)).toEqual(lines);
    expect(lines.map(lineForm).flatMap(faults)).toEqual([]);
  });

  it('read numbers as they are written here and there, and name what is none', () => {
    const lines = typed(LINES, 1, 'price', '1 249,90');
    expect(cell(lines[1] ?? freshLine(''), 'price')).toBe('1249.90');
    expect(faults(typed(LINES, 1, 'price', '85 each')[1])).toEqual([
      'price: "85 each" is no amount of money.',
    ]);
    expect(faults(typed(LINES, 1, 'quantity', '-1')[1])).toEqual([
      'quantity: "-1" is no number of 0 or more.',
    ]);
    expect(faults(typed(LINES, 0, 'quantity', '1.5')[0])).toEqual([
      'quantity: "1.5" is no whole number of pieces.',
    ]);
    expect(faults(typed(LINES, 1, 'cost', '-3')[1])).toEqual(['cost: "-3" is no amount of 0 or more.']);
    expect(faults(typed(LINES, 1, 'price', '-50')[1])).toEqual([]);
  });

  it('take their price from the cost sheet once they are made from one, and are priced by hand again after', () => {
    const fresh = [freshLine('full')];
    const fromSheet = typed(fresh, 0, 'from', 'hall bench');
    expect(fromSheet[0]?.cells).toMatchObject({
      from: BENCH,
      description: 'Bench on turned legs',
      quantity: '1',
      price: '',
    });
    expect(typed(fromSheet, 0, 'price', '12')).toEqual(fromSheet);
    const own = typed(fromSheet, 0, 'from', 'own line');
    expect(faults(own[0])).toEqual(['price: The price is not said.']);
    expect(typed(typed(LINES, 1, 'from', 'delivery'), 1, 'quantity', '3')[1]?.cells).toMatchObject({
      quantity: '',
      unit: '',
      price: '85',
    });
  });

  it('tell cost sheets of one title apart', () => {
    const labels = originChoices(SHEETS).map(({ label }) => label);
    expect(labels).toEqual(['own line', 'delivery', 'Hall bench', 'Hall bench (2)']);
    expect(typed(LINES, 1, 'from', 'Hall bench (2)')[1]?.cells.from).toBe(STOOL);
    expect(faults(typed(LINES, 1, 'from', 'Hall benhc')[1])[0]).toBe('from: names no cost sheet.');
  });

  it('want a group for one of several, and leave it with it', () => {
    const several = typed(LINES, 1, 'taken', 'one of a group');
    expect(faults(several[1])).toEqual(['group: is not named.']);
    const named = typed(typed(several, 1, 'group', 'Seat'), 1, 'standard', 'yes');
    expect(draftLine(named[1] ?? freshLine('')).choice).toEqual({
      kind: 'alternate',
      group: 'Seat',
      isStandard: true,
    });
    expect(typed(named, 1, 'taken', 'always')[1]?.cells).toMatchObject({ group: '', standard: '' });
    expect(typed(LINES, 1, 'group', 'Seat')).toEqual(LINES);
  });

  it('grow by a block from a spreadsheet: words, number, unit, price', () => {
    const block = [
      ['Oak shelf', '3', 'piece', '140,00'],
      ['Putting up', '2.5', 'h', '62', '', ''],
    ];
    const area = { top: 3, bottom: 3, left: 0, right: 0 };
    const { rows } = pasted(LINES, area, block, COLUMNS, () => freshLine('full'));
    const lines = withFollowing(linesOf(rows), LINES, SHEETS);
    expect(lines.slice(3).map(draftLine)).toMatchObject([
      { kind: 'free', description: 'Oak shelf', quantity: '3', unit: 'piece', price: '140.00', tax: 'full' },
      { kind: 'free', description: 'Putting up', quantity: '2.5', unit: 'h', price: '62', tax: 'full' },
    ]);
  });

  it('keep their pictures through a change and give them to a copy', () => {
    const picture = { sha256: 'a'.repeat(64), alternativeText: 'The bench from the front' };
    const shown = LINES.map((line, at) => (at === 1 ? { ...line, pictures: [picture] } : line));
    expect(typed(shown, 1, 'unit', 'pair')[1]?.pictures).toEqual([picture]);
    const copy = freshLine('full', shown[1]);
    expect(copy.pictures).toEqual([picture]);
    expect(copy.key).not.toBe(shown[1]?.key);
  });
});

describe('errors the API tells of lines', () => {
  it('stand at the cell of the line they were sent for, wherever it stands by now', () => {
    const errors = [
      { field: 'lines.1.choice.isStandard', message: 'is one too many', mend: 'Take one.' },
      { field: 'lines.0.pictures.0', message: 'is not there', mend: 'Choose another.' },
      { field: 'validDays', message: 'is too long', mend: 'Shorten it.' },
      { field: 'lines.7.price', message: 'is of no line', mend: 'None.' },
    ];
    const placed = placedAtLines(errors, [{ id: 'bench' }, { id: 'cushion' }]);
    expect(placed.map(([line, name]) => [line, name])).toEqual([
      ['cushion', 'standard'],
      ['bench', 'details'],
    ]);
    expect(lineErrors(placed).get('cushion')?.get('standard')?.message).toBe('is one too many');
    expect(cellOfField('costSheetId')).toBe('from');
  });
});
