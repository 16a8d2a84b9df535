import type { WorkedCostSheet } from '@scantling/contracts';
import { text, type Workbook, type WorkbookRow, type WorkbookSheet, WorkingBook } from '@scantling/figures';
import { costClassRows } from './cost-class-rows.ts';
import { materialSheet } from './material-sheet.ts';
import { partSheet } from './part-sheet.ts';
import { figureRow, priceRows } from './price-rows.ts';
import { columnHeads, headRows, inLines } from './sheet-head.ts';
import { workSheet } from './work-sheet.ts';

/** What a cost sheet's workbook is asked for, beside the sheet itself. */
export interface CostSheetWorkbook {
  readonly title: string;
  /** What it rests on: design, client, since when it is frozen. */
  readonly facts: readonly string[];
  /** Worked out with derivations. */
  readonly worked: WorkedCostSheet;
  /** How lengths are entered and shown. */
  readonly lengths: 'mm' | 'in';
  readonly paper: 'a4' | 'letter';
}

/**
 * A cost sheet as a workbook of formulas: what it costs and what to charge in front, materials, work and parts behind,
 * then every input once and the whole working.
 * @throws UnknownFigureError where the sheet was worked out without its derivations
 */
export function costSheetWorkbook(given: CostSheetWorkbook): Workbook {
  const { title, facts, worked, lengths, paper } = given;
  const book = new WorkingBook(worked.figures, lengths);
  layOutWorking(book, worked);
  const about = {
    title,
    facts: [
      ...facts,
      `On the ${worked.basis} basis, prices of ${worked.onDate}, amounts in ${worked.currency}.`,
    ],
  };
  return {
    title,
    date: worked.onDate,
    paper,
    sheets: [
      frontSheet(book, worked, headRows(about)),
      materialSheet(book, worked, title),
      workSheet(book, worked, title),
      partSheet(book, worked, title, lengths),
      ...book.sheets(),
    ],
  };
}

/** The working in the order somebody would follow it: materials, work, then cost and price. */
function layOutWorking(book: WorkingBook, { columns, parts, parameters }: WorkedCostSheet): void {
  book.section(
    'Parameters',
    parameters.flatMap(({ value }) => value ?? []),
  );
  book.section(
    'Parts',
    parts.flatMap((part) => [part.roughLength, part.roughWidth, part.roughFace]),
  );
  for (const { quantity, materials, freightIn, work, classes, price } of columns) {
    const pieces = quantity === 1 ? '1 piece' : `${quantity} pieces`;
    for (const line of materials)
      book.section(`${line.name}, ${pieces}`, [
        line.needed,
        line.used,
        line.bought,
        line.boughtCost,
        line.charged,
        line.offcutValue,
        line.loss,
      ]);
    book.section(
      `Freight to the workshop, ${pieces}`,
      freightIn.flatMap((line) => [line.boughtCost, line.charged, line.offcutValue, line.loss]),
    );
    book.section(
      `Work, ${pieces}`,
      work.flatMap((line) =>
        [line.hours, line.labour, line.machineHours ?? [], line.machineCost ?? []].flat(),
      ),
    );
    book.section(`Cost, ${pieces}`, Object.values(classes));
    book.section(
      `Price, ${pieces}`,
      Object.values(price).flatMap((id) => id ?? []),
    );
  }
  book.section('A piece, and hours', []);
}

function frontSheet(book: WorkingBook, worked: WorkedCostSheet, head: readonly WorkbookRow[]): WorkbookSheet {
  const { columns, notices, isComplete } = worked;
  const each = (label: string, pick: (column: WorkedCostSheet['columns'][number]) => string) =>
    figureRow(book, label, columns.map(pick), {});
  const warnings = [
    ...(isComplete ? [] : ['Not complete: a material has no price, so cost and price are too low.']),
    ...notices.map(({ message, mend }) => `${message}: ${mend}.`),
  ];
  const top = [...head, piecesRow(book, worked)];
  return {
    name: 'Cost sheet',
    widths: [48, 12, ...columns.map(() => 15)],
    headRows: top.length,
    headColumns: 2,
    rows: [
      ...top,
      ...costClassRows(book, columns),
      [],
      [text('Price', 'heading')],
      ...priceRows(
        book,
        columns.map(({ price }) => price),
        worked.currency,
      ),
      [],
      [text('One piece', 'heading')],
      each('Cost of a piece', ({ perPiece }) => perPiece.cost),
      each('Price of a piece', ({ perPiece }) => perPiece.price),
      each('Hours of a piece', ({ perPiece }) => perPiece.hours),
      [],
      [text('Hours', 'heading')],
      each('Work, all hands', ({ hours }) => hours.work),
      each('Machines', ({ hours }) => hours.machine),
      each('Glue and drying', ({ hours }) => hours.elapsed),
      each('Owner, with quoting, buying and delivery', ({ hours }) => hours.owner),
      ...(warnings.length === 0
        ? []
        : [
            [],
            [text('To check', 'heading')],
            ...warnings.flatMap(inLines).map((line) => [text(line, 'warning')]),
          ]),
    ],
  };
}

/** The numbers of pieces head their columns; they are inputs like others. */
function piecesRow(book: WorkingBook, { columns, figures }: WorkedCostSheet): WorkbookRow {
  return [
    ...columnHeads('Pieces', ''),
    ...columns.map(({ quantity }) => {
      const id = `quantity/${quantity}`;
      return figures[id] === undefined
        ? text(String(quantity), 'number-head')
        : book.cell(id, { role: 'number-head', format: '#,##0' });
    }),
  ];
}
