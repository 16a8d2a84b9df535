import type { Workbook, WorkbookCell, WorkbookSheet } from '@scantling/figures';
import ExcelJS from 'exceljs';
import { cellStyle, NUMBERS_ONLY } from './cell-styles.ts';
import { datedZip } from './dated-zip.ts';

/** A4 by its code (ECMA-376 part 1, 18.3.1.63); Letter is what a sheet without one has. */
const PAPER_SIZES = { letter: {}, a4: { paperSize: 9 } } as const;
/** What a cell holds at most (ECMA-376 part 1, 18.4.12, and common practice of spreadsheet programs). */
const MOST_LETTERS = 32_000;
const CONTROLS = /[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu;

function safeText(text: string): string {
  return text.replace(CONTROLS, ' ').slice(0, MOST_LETTERS);
}

/** A sheet that is narrower than this, in digits, is easier to read on upright paper. */
const UPRIGHT_WIDTH = 125;

/** In headers and footers "&" begins a code. */
function footerText(text: string): string {
  return safeText(text).slice(0, 120).replaceAll('&', '&&');
}

function fill(cell: ExcelJS.Cell, given: WorkbookCell): void {
  const { style, numberStyle } = cellStyle(given.role);
  if (given.kind === 'text') {
    cell.style = style;
    cell.value = safeText(given.text);
    return;
  }
  cell.style = numberStyle(given.format);
  if (given.kind === 'formula') {
    cell.value = {
      formula: given.formula,
      ...(given.value === undefined ? {} : { result: Number(given.value) }),
    };
    return;
  }
  cell.value = Number(given.value);
  if (given.role === 'input') cell.dataValidation = NUMBERS_ONLY;
}

async function addSheet(workbook: ExcelJS.Workbook, given: WorkbookSheet, all: Workbook): Promise<void> {
  const width = given.widths.reduce((all, one) => all + one, 0);
  const sheet = workbook.addWorksheet(given.name, {
    views: [{ state: 'frozen', xSplit: given.headColumns, ySplit: given.headRows, showGridLines: false }],
    pageSetup: {
      ...PAPER_SIZES[all.paper],
      orientation: width < UPRIGHT_WIDTH ? 'portrait' : 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      horizontalCentered: false,
      margins: { left: 0.5, right: 0.4, top: 0.5, bottom: 0.6, header: 0.3, footer: 0.3 },
    },
    headerFooter: {
      oddFooter: `&L&8${footerText(all.title)}&C&8&A&R&8&P / &N`,
    },
  });
  sheet.columns = given.widths.map((width) => ({ width }));
  given.rows.forEach((cells, row) => {
    cells.forEach((cell, column) => {
      if (cell === null) return;
      const made = sheet.getCell(row + 1, column + 1);
      fill(made, cell);
      if (cell.kind === 'number' && cell.name !== undefined)
        workbook.definedNames.add(`'${given.name}'!${made.$col$row}`, cell.name);
    });
    // The line under a heading goes over the whole sheet.
    if (cells.length === 1 && cells[0]?.role === 'heading')
      for (let column = 2; column <= given.widths.length; column += 1)
        sheet.getCell(row + 1, column).style = cellStyle('heading').style;
  });
  const last = sheet.getColumn(given.widths.length).letter;
  sheet.pageSetup.printArea = `A1:${last}${Math.max(1, given.rows.length)}`;
  sheet.pageSetup.printTitlesRow = `1:${given.headRows}`;
  await sheet.protect('', {
    selectLockedCells: true,
    selectUnlockedCells: true,
    formatColumns: true,
    formatRows: true,
    formatCells: true,
    autoFilter: true,
    sort: true,
  });
}

/**
 * A workbook of formulas as XLSX bytes: text is only text, inputs are unlocked and take numbers only, every sheet prints
 * on the width of a page, landscape where it is wide, with its heads repeated. The same workbook gives the same bytes within a build.
 */
export async function renderWorkbook(given: Workbook): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const made = new Date(`${given.date}T00:00:00Z`);
  workbook.created = made;
  workbook.modified = made;
  workbook.creator = '';
  workbook.lastModifiedBy = '';
  workbook.title = safeText(given.title);
  workbook.calcProperties.fullCalcOnLoad = true;
  for (const sheet of given.sheets) await addSheet(workbook, sheet, given);
  return datedZip(new Uint8Array(await workbook.xlsx.writeBuffer()));
}
