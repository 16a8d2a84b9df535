import { HyperFormula } from 'hyperformula';
import { expect, it } from 'vitest';
import {
  constant,
  derive,
  entered,
  type Figure,
  FigureTableBuilder,
  input,
  number,
  round,
  roundMoney,
  scale,
  shareOut,
  sum,
} from '../index.ts';
import type { WorkbookCell, WorkbookSheet } from './workbook.ts';
import { WorkingBook } from './working-book.ts';

const money = (key: string, value: string, label = key) =>
  input({ key, label, unit: 'money', value, currency: 'USD', source: entered() });

function bookOf(figures: Readonly<Record<string, Figure>>, lengths: 'mm' | 'in' = 'mm') {
  const table = new FigureTableBuilder({ withDerivations: true });
  const ids = Object.entries(figures).map(([name, figure]) => table.add(name, figure));
  const book = new WorkingBook(table.table(), lengths);
  const cells = ids.map((id) => book.cell(id));
  const front: WorkbookSheet = { name: 'Front', widths: [10], headRows: 0, headColumns: 0, rows: [cells] };
  return { book, cells, sheets: [front, ...book.sheets()] };
}

function contentOf(cell: WorkbookCell | null) {
  if (cell === null) return null;
  if (cell.kind === 'text') return `'${cell.text}`;
  return cell.kind === 'number' ? Number(cell.value) : `=${cell.formula}`;
}

/** Every formula of the sheets, worked out by a spreadsheet engine that is none of ours. */
function calculated(sheets: readonly WorkbookSheet[]) {
  const names = sheets.flatMap((sheet) =>
    sheet.rows.flatMap((row, at) =>
      row.flatMap((cell) =>
        cell?.kind === 'number' && cell.name !== undefined
          ? [{ name: cell.name, expression: `=${sheet.name}!$B$${at + 1}` }]
          : [],
      ),
    ),
  );
  const content = Object.fromEntries(
    sheets.map(({ name, rows }) => [name, rows.map((row) => row.map(contentOf))]),
  );
  const engine = HyperFormula.buildFromSheets(content, { licenseKey: 'gpl-v3' }, names);
  const values = sheets.flatMap((sheet, at) =>
    sheet.rows.flatMap((row, line) =>
      row.flatMap((cell, col) =>
        cell?.kind === 'formula'
          ? [
              {
                formula: cell.formula,
                value: cell.value,
                worked: engine.getCellValue({ sheet: at, row: line, col }),
              },
            ]
          : [],
      ),
    ),
  );
  engine.destroy();
  return values;
}

function faults(sheets: readonly WorkbookSheet[]): string[] {
  return calculated(sheets).flatMap(({ formula, value, worked }) => {
    const isRight =
      typeof worked === 'number' && (value === undefined || Math.abs(worked - Number(value)) < 1e-9);
    return isRight && formula.length < 8192
      ? []
      : [`=${formula} comes to ${JSON.stringify(worked)}, not ${value}`];
  });
}

const inputsOf = (sheets: readonly WorkbookSheet[]) =>
  sheets.flatMap(({ rows }) => rows.flat().flatMap((cell) => (cell?.kind === 'number' ? [cell] : [])));

it('puts every leaf once on the sheet of inputs, by its name, and derives everything else', () => {
  const pay = input({
    key: 'labour/owner/pay',
    label: 'Owner: pay',
    unit: 'money/h',
    value: '38',
    currency: 'USD',
    source: { kind: 'shop-rate', text: 'labour grades' },
  });
  const hours = input({ key: 'bill/cut', label: 'Cut', unit: 'h', value: '2.5', source: entered() });
  const labour = derive('labour', 'money', 'product', [pay, hours]);
  const total = roundMoney('total', sum('both', 'money', [labour, scale('again', labour, number(2))]));
  const { cells, sheets } = bookOf({ total });
  expect(cells[0]).toMatchObject({
    formula: expect.stringMatching(/^Working!B\d+$/),
    value: '285',
    format: '#,##0.00',
  });
  expect(inputsOf(sheets).map(({ name, role }) => [name, role])).toEqual([
    ['Cut', 'input'],
    ['Owner_pay', 'input'],
  ]);
  expect(calculated(sheets).map(({ formula }) => formula)).toContain('(Owner_pay*Cut)');
  expect(faults(sheets)).toEqual([]);
});

it('writes bare numbers into formulas and gives long or named constants a cell that is no input', () => {
  const side = input({ key: 'side', label: 'side', unit: 'mm', value: '508', source: entered() });
  const root = derive('root', 'ratio', 'power', [derive('side', 'ratio', 'same', [side]), number('-0.5')]);
  const feet = derive('feet', 'ft2', 'product', [
    root,
    constant('square feet in a square metre', 'ratio', '10.7639104167097223083335055559'),
  ]);
  const { sheets } = bookOf({ feet });
  expect(inputsOf(sheets).map(({ name, role }) => [name, role])).toEqual([
    ['side', 'input'],
    ['square_feet_in_a_square_metre', 'value'],
  ]);
  expect(calculated(sheets).map(({ formula }) => formula)).toContain('POWER(B4,(-0.5))');
  expect(faults(sheets)).toEqual([]);
});

it('takes lengths in inches where the design is in inches, and reckons in millimetres', () => {
  const long = input({ key: 'long', label: 'Shelf: length', unit: 'mm', value: '800.1', source: entered() });
  const rough = sum('rough length', 'mm', [long, long]);
  const { cells, sheets } = bookOf({ rough }, 'in');
  expect(inputsOf(sheets)).toMatchObject([{ value: '31.5', name: 'Shelf_length' }]);
  expect(cells[0]).toMatchObject({ value: '63', format: '#,##0.000' });
  expect(calculated(sheets).map(({ formula }) => formula)).toContain(
    'SUM((Shelf_length*25.4),(Shelf_length*25.4))',
  );
  expect(faults(sheets)).toEqual([]);
});

it('adds up long lists in parts, so that no formula outgrows a spreadsheet', () => {
  const many = Array.from({ length: 1300 }, (_, at) =>
    money(`amount/${at}`, String((at % 7) + 0.25), `An amount with a rather long label, number ${at}`),
  );
  const { sheets } = bookOf({ total: sum('total', 'money', many) });
  expect(faults(sheets)).toEqual([]);
  const lengths = calculated(sheets).map(({ formula }) => formula.length);
  expect(Math.max(...lengths)).toBeLessThan(2000);
});

it('shares an amount out by many weights to the cent, the largest rests first', () => {
  const weights = Array.from({ length: 60 }, (_, at) => money(`weight/${at}`, String(1 + (at % 11) * 0.37)));
  const total = money('discount', '-100.01');
  const shares = shareOut(
    weights.map((_, at) => `share ${at}`),
    total,
    weights,
  );
  const { sheets, cells } = bookOf({
    ...Object.fromEntries(shares.map((share, at) => [`share-${at}`, share])),
    again: sum('all shares', 'money', shares),
  });
  expect(faults(sheets)).toEqual([]);
  expect(cells.at(-1)?.value).toBe('-100.01');
});

it('rounds ties and reaches breaks that a binary number just misses', () => {
  const parts = ['0.1', '0.2'].map((value) =>
    input({ key: value, label: value, unit: 'h', value, source: entered() }),
  );
  const third = input({ key: 'third', label: 'break', unit: 'h', value: '0.3', source: entered() });
  const reached = derive('price', 'money', 'choose', [
    sum('need', 'h', parts),
    third,
    money('low', '5'),
    money('high', '6'),
  ]);
  // 1.1 x 1.15 is 1.265, in binary 1.2649999999999999.
  const tie = round('tie', scale('product', money('a', '1.1'), number('1.15')), 2);
  const { sheets, cells } = bookOf({ reached, tie });
  expect(cells.map(({ value }) => value)).toEqual(['5', '1.27']);
  expect(faults(sheets)).toEqual([]);
});

it('is the same for a table that comes back from a store in another order', () => {
  const build = () => {
    const table = new FigureTableBuilder({ withDerivations: true });
    table.add('total', sum('total', 'money', [money('b', '1', 'price'), money('a', '2', 'price')]));
    return table.table();
  };
  const turned = Object.fromEntries(Object.entries(build()).reverse());
  const [one, other] = [build(), turned].map((table) => {
    const book = new WorkingBook(table);
    book.section('All', ['total']);
    return book.sheets();
  });
  expect(other).toEqual(one);
});
