import type { WorkedCostSheet } from '@scantling/contracts';
import { moneyFormat, text, type WorkbookCell, type WorkingBook } from '@scantling/figures';
import { columnHeads } from './sheet-head.ts';
import { TableSheet } from './table-sheet.ts';

type WorkLine = WorkedCostSheet['columns'][number]['work'][number];

const HEADS = [
  'Operation',
  'Grade',
  '>Hours',
  '>Rate an hour',
  '>Labour',
  'Machine',
  '>Machine hours',
  '>Rate an hour',
  '>Machine cost',
  '>Glue and drying, hours',
];
const MONEY_COLUMNS = [4, 8];

/** Hours, rates and cost of every operation, a table for each number of pieces. */
export function workSheet(book: WorkingBook, worked: WorkedCostSheet, title: string) {
  const head = [[text(`${title}: work`, 'title')], columnHeads(...HEADS)];
  const sheet = new TableSheet(head, worked.currency);
  for (const column of worked.columns) {
    sheet.begin(column.quantity === 1 ? 'For 1 piece' : `For ${column.quantity} pieces`);
    const first = sheet.nextRow;
    for (const line of column.work) sheet.add(...workCells(book, line));
    if (sheet.nextRow > first) sheet.total('All work', first, MONEY_COLUMNS);
  }
  return sheet.sheet({
    name: 'Work',
    widths: [44, 16, 12, 14, 14, 18, 12, 14, 14, 14],
    headRows: head.length,
  });
}

function workCells(book: WorkingBook, line: WorkLine): (WorkbookCell | null)[] {
  const maybe = (id: string | null) => (id === null ? null : book.cell(id));
  const rate = (amount: string) => {
    const id = rateBehind(book, amount);
    return id === null ? null : book.cell(id, { format: moneyFormat(book.node(id).currency) });
  };
  return [
    text(line.name, 'label'),
    text(line.isOwner ? `${line.grade} (owner)` : line.grade, 'unit'),
    book.cell(line.hours),
    rate(line.labour),
    book.cell(line.labour),
    text(line.machine ?? '', 'unit'),
    maybe(line.machineHours),
    line.machineCost === null ? null : rate(line.machineCost),
    maybe(line.machineCost),
    book.cell(line.elapsed),
  ];
}

/** The rate an amount is a product with, through whatever only renames it. */
function rateBehind(book: WorkingBook, id: string): string | null {
  const { unit, how } = book.node(id);
  if (unit === 'money/h') return id;
  const [first] = how?.inputs ?? [];
  return first === undefined || (how?.operation !== 'same' && how?.operation !== 'product')
    ? null
    : rateBehind(book, first);
}
