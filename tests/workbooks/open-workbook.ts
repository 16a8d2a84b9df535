import ExcelJS from 'exceljs';
import { HyperFormula, type SimpleCellAddress } from 'hyperformula';

interface OpenedCell {
  readonly sheet: string;
  readonly address: string;
  /** What the file says it comes to; a 0 that is written is read back as nothing. */
  readonly stored: number;
  readonly formula: string;
  /** What the spreadsheet engine works out. */
  readonly worked: unknown;
}

export interface OpenedWorkbook {
  readonly file: ExcelJS.Workbook;
  /** The names of the inputs, with the sheet and cell of each. */
  readonly names: ReadonlyMap<string, { sheet: string; address: string }>;
  /** Every formula of the workbook. */
  readonly formulas: () => OpenedCell[];
  /** What a cell comes to. */
  readonly at: (sheet: string, address: string) => unknown;
  /** The cells of the row with this text in its first column, as they are worked out. */
  readonly row: (sheet: string, label: string) => unknown[];
  /** Enters a number under a name. */
  readonly enter: (name: string, value: number) => void;
  readonly close: () => void;
}

function contentOf(value: ExcelJS.CellValue): string | number | null {
  if (typeof value === 'number' || value === null || value === undefined) return value ?? null;
  if (typeof value === 'object' && 'formula' in value) return `=${value.formula}`;
  // An apostrophe marks text for the engine, which would read "=1+1" and "1/2" otherwise.
  return `'${String(value)}`;
}

/**
 * Reads an XLSX file back and gives its formulas to a spreadsheet engine that is none of ours (HyperFormula, GPL,
 * for development only).
 */
export async function openWorkbook(bytes: Uint8Array): Promise<OpenedWorkbook> {
  const file = new ExcelJS.Workbook();
  await file.xlsx.load(Uint8Array.from(bytes).buffer);
  const names = new Map(
    file.definedNames.model.flatMap(({ name, ranges }) => {
      const place = /^'?(?<sheet>[^'!]+)'?!\$?(?<column>[A-Z]+)\$?(?<row>\d+)$/.exec(ranges[0] ?? '');
      const { sheet = '', column = '', row = '' } = place?.groups ?? {};
      return place === null ? [] : [[name, { sheet, address: `${column}${row}` }] as const];
    }),
  );
  const sheets = Object.fromEntries(
    file.worksheets.map((sheet) => [
      sheet.name,
      Array.from({ length: sheet.rowCount }, (_, row) =>
        Array.from({ length: sheet.columnCount }, (_, column) =>
          contentOf(sheet.getCell(row + 1, column + 1).value),
        ),
      ),
    ]),
  );
  const expressions = [...names].map(([name, { sheet, address }]) => ({
    name,
    expression: `='${sheet}'!${address.replace(/([A-Z]+)(\d+)/, '$$$1$$$2')}`,
  }));
  const engine = HyperFormula.buildFromSheets(sheets, { licenseKey: 'gpl-v3', maxRows: 60_000 }, expressions);
  const placeOf = (sheet: string, address: string): SimpleCellAddress => {
    const place = engine.simpleCellAddressFromString(address, engine.getSheetId(sheet) ?? -1);
    if (place === undefined) throw new RangeError(`there is no ${sheet}!${address}`);
    return place;
  };
  const at = (sheet: string, address: string) => engine.getCellValue(placeOf(sheet, address));
  return {
    file,
    names,
    at,
    formulas: () =>
      file.worksheets.flatMap((sheet) => {
        const cells: OpenedCell[] = [];
        sheet.eachRow((row) =>
          row.eachCell((cell) => {
            const { value } = cell;
            if (value === null || typeof value !== 'object' || !('formula' in value)) return;
            const stored = typeof value.result === 'number' ? value.result : 0;
            const { name } = sheet;
            const { address } = cell;
            cells.push({ sheet: name, address, stored, formula: value.formula, worked: at(name, address) });
          }),
        );
        return cells;
      }),
    row: (sheet, label) => {
      const found = file.getWorksheet(sheet);
      const numbers = Array.from({ length: found?.rowCount ?? 0 }, (_, index) => index + 1);
      const number = numbers.find((one) => found?.getCell(one, 1).value === label);
      if (found === undefined || number === undefined) throw new RangeError(`no row "${label}" in ${sheet}`);
      return Array.from({ length: found.columnCount }, (_, column) =>
        at(sheet, found.getCell(number, column + 1).address),
      );
    },
    enter: (name, value) => {
      const place = names.get(name);
      if (place === undefined) throw new RangeError(`there is no name ${name}`);
      engine.setCellContents(placeOf(place.sheet, place.address), value);
    },
    close: () => engine.destroy(),
  };
}
