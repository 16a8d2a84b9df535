import ExcelJS from 'exceljs';
import type { WrittenCell } from './table.ts';

export interface WrittenSheet {
  readonly name: string;
  /** The first row holds the headers. */
  readonly rows: readonly (readonly WrittenCell[])[];
}

// A workbook keeps numbers as doubles, so longer ones stay text rather than lose digits.
function storedValue(cell: WrittenCell): string | number {
  if (typeof cell === 'string') return cell;
  const digits = cell.number.replace(/^-?0*\.?0*|[.]/g, '');
  return digits.length > 15 ? cell.number : Number(cell.number);
}

/** Sheets as an XLSX workbook: text stays text, whatever it begins with, and numbers are numbers. */
export async function writeWorkbook(sheets: readonly WrittenSheet[]): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  for (const { name, rows } of sheets) {
    const sheet = workbook.addWorksheet(name.replace(/[[\]:*?/\\]/g, ' ').slice(0, 31), {
      views: [{ state: 'frozen', ySplit: 1 }],
    });
    for (const row of rows) sheet.addRow(row.map(storedValue));
    sheet.getRow(1).font = { bold: true };
  }
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}
