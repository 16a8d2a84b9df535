import type { WorkedCostSheet } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { type FormulaCell, moneyFormat, text, unitLabel, type WorkingBook } from '@scantling/figures';
import { columnHeads } from './sheet-head.ts';
import { TableSheet } from './table-sheet.ts';

type Column = WorkedCostSheet['columns'][number];
type MaterialLine = Column['materials'][number];

const CLASS_WORDS: Readonly<Record<MaterialLine['class'], string>> = {
  'direct-materials': 'direct material',
  'bought-in': 'bought-in',
  subcontract: 'subcontract',
  consumables: 'consumable',
};

const HEADS = [
  'Material',
  'Class',
  '>Needed',
  '',
  '>Used',
  '>Bought',
  '',
  '>Price of one',
  '>Cost of what is bought',
  '>Charged',
  '>Leftover to stock',
  '>Loss',
  'Supplier, and why this price',
];
const MONEY_COLUMNS = [8, 9, 10, 11];

/** What is needed, used, bought and charged of every material, a table for each number of pieces. */
export function materialSheet(book: WorkingBook, worked: WorkedCostSheet, title: string) {
  const head = [[text(`${title}: materials`, 'title')], columnHeads(...HEADS)];
  const sheet = new TableSheet(head, worked.currency);
  for (const column of worked.columns) {
    sheet.begin(column.quantity === 1 ? 'For 1 piece' : `For ${column.quantity} pieces`);
    const first = sheet.nextRow;
    for (const line of column.materials) addMaterial(sheet, book, line);
    for (const line of column.freightIn)
      sheet.add(
        text(`Freight of ${line.name}`, 'label'),
        text(CLASS_WORDS[line.class], 'unit'),
        ...Array.from({ length: 6 }, () => null),
        book.cell(line.boughtCost),
        book.cell(line.charged),
        book.cell(line.offcutValue),
        book.cell(line.loss),
        text(line.rule, 'remark'),
      );
    if (sheet.nextRow > first) sheet.total('All materials', first, MONEY_COLUMNS);
    for (const line of column.unpriced)
      sheet.add(
        text(`${line.name}: not in the cost`, 'warning'),
        null,
        book.cell(line.needed),
        unitOf(book, line.needed),
        ...Array.from({ length: 8 }, () => null),
        text(`No price: ${line.why}`, 'remark'),
      );
  }
  return sheet.sheet({
    name: 'Materials',
    widths: [38, 15, 11, 8, 11, 11, 8, 12, 14, 14, 14, 14, 60],
    headRows: head.length,
  });
}

function unitOf(book: WorkingBook, id: string) {
  const { unit, currency, label } = book.node(id);
  return text(unitLabel(unit, currency, label), 'unit');
}

function addMaterial(sheet: TableSheet, book: WorkingBook, line: MaterialLine): void {
  const row = sheet.nextRow;
  sheet.add(
    text(line.name, 'label'),
    text(CLASS_WORDS[line.class], 'unit'),
    book.cell(line.needed),
    unitOf(book, line.needed),
    book.cell(line.used),
    book.cell(line.bought),
    unitOf(book, line.bought),
    priceOfOne(book, line, row),
    book.cell(line.boughtCost),
    book.cell(line.charged),
    book.cell(line.offcutValue),
    book.cell(line.loss),
    text(`${line.supplier}, list of ${line.listDate}: ${line.rule}`, 'remark'),
  );
}

/** What one unit comes to, tax that stays included. */
function priceOfOne(book: WorkingBook, line: MaterialLine, row: number): FormulaCell {
  const [cost, bought] = [book.node(line.boughtCost), book.node(line.bought)];
  const quantity = decimal(bought.value);
  return {
    kind: 'formula',
    formula: `IF(F${row}=0,0,I${row}/F${row})`,
    value: quantity.isZero() ? '0' : decimal(cost.value).div(quantity).toString(),
    format: moneyFormat(cost.currency, 2),
    role: 'value',
  };
}
