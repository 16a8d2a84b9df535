import { describe, expect, it } from 'vitest';
import { fromTabSeparated } from '../../lib/tab-separated.ts';
import {
  choiceNamed,
  choicesFor,
  type EditColumn,
  type GridRow,
  shownText,
  withText,
} from './edit-column.ts';
import { cleared, filledDown, filledRight } from './fill-cells.ts';
import { pasted } from './paste-block.ts';
import { duplicated, inserted, movedBy, movedTo, removed } from './row-edits.ts';

const COLOURS = [
  { id: 'r', label: 'red', note: 'warm' },
  { id: 'g', label: 'green' },
];
const text: EditColumn['read'] = (typed) => ({ text: typed });
const COLUMNS: readonly EditColumn[] = [
  { id: 'name', header: 'Name', kind: 'text', width: 100, read: text },
  {
    id: 'count',
    header: 'Count',
    kind: 'text',
    width: 60,
    read: (typed) => (/^\d+$/.test(typed) ? { text: typed } : { error: { message: 'is no number' } }),
  },
  {
    id: 'colour',
    header: 'Colour',
    kind: 'choice',
    choices: COLOURS,
    width: 80,
    read: (typed) => ({ text: choiceNamed(COLOURS, typed) ?? typed }),
  },
];

const row = (key: string, name: string, count = '', colour = ''): GridRow => ({
  key,
  cells: { name, count, colour },
});
const ROWS = [row('1', 'a', '10', 'r'), row('2', 'b', '20', 'g'), row('3', 'c', '30', '')];
const said = (rows: readonly GridRow[]) =>
  rows.map((one) => COLUMNS.map((column) => shownText(one, column)).join(' '));
let fresh = 0;
const freshRow = () => {
  fresh += 1;
  return row(`fresh ${fresh}`, '');
};
const at = (top: number, left: number, bottom = top, right = left) => ({ top, left, bottom, right });

describe('a block pasted out of a spreadsheet', () => {
  it('goes in from the cell on and adds the rows it needs', () => {
    const { rows, area } = pasted(
      ROWS,
      at(2, 0),
      fromTabSeparated('x\t1\tred\r\ny\t2\tgreen\r\n'),
      COLUMNS,
      freshRow,
    );
    expect(said(rows)).toEqual(['a 10 red', 'b 20 green', 'x 1 red', 'y 2 green']);
    expect(rows[2]?.key).toBe('3');
    expect(area).toEqual(at(2, 0, 3, 2));
  });

  it('says how many columns found no place, and leaves the rest of a ragged row as it is', () => {
    const { rows, columnsLeftOut } = pasted(ROWS, at(0, 1), [['7', 'green', 'z'], ['8']], COLUMNS, freshRow);
    expect(said(rows)).toEqual(['a 7 green', 'b 8 green', 'c 30 ']);
    expect(columnsLeftOut).toBe(1);
  });

  it('fills a selection with one value, and with rows as often as they fit whole', () => {
    const one = pasted(ROWS, at(0, 1, 2, 1), [['5']], COLUMNS, freshRow);
    expect(said(one.rows)).toEqual(['a 5 red', 'b 5 green', 'c 5 ']);
    const two = pasted(ROWS, at(0, 1, 2, 1), [['5'], ['6']], COLUMNS, freshRow);
    expect(said(two.rows)).toEqual(['a 5 red', 'b 6 green', 'c 30 ']);
  });

  it('keeps what cannot be read as it was typed', () => {
    const { rows } = pasted(ROWS, at(0, 1), [['about five', 'mauve']], COLUMNS, freshRow);
    expect(rows[0]?.cells).toMatchObject({ count: 'about five', colour: 'mauve' });
  });

  it('changes nothing where it is empty', () => {
    expect(pasted(ROWS, at(0, 0), fromTabSeparated(''), COLUMNS, freshRow).rows).toBe(ROWS);
  });
});

describe('filling', () => {
  it('takes the top row down, or what stands above a single row', () => {
    expect(said(filledDown(ROWS, at(0, 1, 2, 2), COLUMNS))).toEqual(['a 10 red', 'b 10 red', 'c 10 red']);
    expect(said(filledDown(ROWS, at(2, 2), COLUMNS))).toEqual(['a 10 red', 'b 20 green', 'c 30 green']);
    expect(filledDown(ROWS, at(0, 1), COLUMNS)).toBe(ROWS);
  });

  it('takes the left column right, or what stands left of a single column', () => {
    expect(said(filledRight(ROWS, at(0, 0, 1, 1), COLUMNS))).toEqual(['a a red', 'b b green', 'c 30 ']);
    expect(said(filledRight(ROWS, at(1, 1), COLUMNS))).toEqual(['a 10 red', 'b b green', 'c 30 ']);
    expect(filledRight(ROWS, at(0, 0), COLUMNS)).toBe(ROWS);
  });

  it('clears what is selected and nothing else', () => {
    expect(said(cleared(ROWS, at(0, 1, 1, 2), COLUMNS))).toEqual(['a  ', 'b  ', 'c 30 ']);
  });
});

describe('rows', () => {
  const keys = (rows: readonly GridRow[]) => rows.map(({ key }) => key).join('');
  it('are inserted, removed, duplicated and moved, the others staying as they are', () => {
    expect(keys(inserted(ROWS, 1, [row('n', '')]))).toBe('1n23');
    expect(keys(removed(ROWS, { top: 0, bottom: 1 }))).toBe('3');
    expect(keys(duplicated(ROWS, { top: 0, bottom: 1 }, (one) => ({ ...one, key: `${one.key}'` })))).toBe(
      "121'2'3",
    );
    expect(keys(movedBy(ROWS, { top: 0, bottom: 1 }, 1))).toBe('312');
    expect(keys(movedBy(ROWS, { top: 2, bottom: 2 }, -1))).toBe('132');
    expect(movedBy(ROWS, { top: 0, bottom: 0 }, -1)).toBe(ROWS);
    expect(movedBy(ROWS, { top: 1, bottom: 2 }, 1)).toBe(ROWS);
    expect(keys(movedTo(ROWS, 0, 2))).toBe('231');
    expect(keys(movedTo(ROWS, 2, 0))).toBe('312');
    for (const [from, to] of [
      [1, 1],
      [0, 3],
      [3, 0],
      [0, -1],
    ] as const)
      expect(movedTo(ROWS, from, to)).toBe(ROWS);
  });

  it('take nothing into a cell that is worked out, in a whole column or in some rows', () => {
    const [name, count] = COLUMNS;
    if (name === undefined || count === undefined) throw new Error('columns are missing');
    const sum: EditColumn = { ...count, kind: 'worked', shown: ({ cells }) => `${cells.count} in all` };
    expect(withText(row('1', 'a', '10'), sum, '99').cells.count).toBe('10');
    expect(shownText(row('1', 'a', '10'), sum)).toBe('10 in all');
    const inSome: EditColumn = { ...count, inRow: (one) => (one?.cells.name === 'a' ? sum : count) };
    const columns = [name, inSome];
    const { rows } = pasted(
      ROWS,
      at(0, 0),
      [
        ['a', '1'],
        ['b', '2'],
      ],
      columns,
      freshRow,
    );
    expect(rows.map(({ cells }) => cells.count)).toEqual(['10', '2', '30']);
    const copied = rows.map((one) => shownText(one, inSome));
    expect(copied).toEqual(['10 in all', '2', '30']);
  });
});

describe('a choice', () => {
  it('is named by its id or its label, whatever the case', () => {
    expect(choiceNamed(COLOURS, 'G')).toBe('g');
    expect(choiceNamed(COLOURS, ' Red ')).toBe('r');
    expect(choiceNamed(COLOURS, 'mauve')).toBeNull();
  });

  it('is found by any of its words, what begins with them first', () => {
    expect(choicesFor(COLOURS, 'r').map(({ id }) => id)).toEqual(['r', 'g']);
    expect(choicesFor(COLOURS, 'warm').map(({ id }) => id)).toEqual(['r']);
    expect(choicesFor(COLOURS, '')).toBe(COLOURS);
    expect(choicesFor(COLOURS, 'x')).toEqual([]);
  });

  it('is trimmed and shown by its label', () => {
    const colour = COLUMNS[2];
    expect(colour && shownText(withText(row('1', 'a'), colour, ' green '), colour)).toBe('green');
  });
});
