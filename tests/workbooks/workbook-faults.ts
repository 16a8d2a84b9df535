import type { FigureNode } from '@scantling/figures';
import type { OpenedWorkbook } from './open-workbook.ts';

const CLOSE = 1e-9;

export function isClose(value: unknown, wanted: number): boolean {
  return typeof value === 'number' && Math.abs(value - wanted) <= CLOSE * Math.max(1, Math.abs(wanted));
}

/**
 * What is wrong with a workbook in itself: a formula that the spreadsheet engine does not work out, or to something else
 * than the product wrote beside it; a formula longer than programs take (8,192 letters, ECMA-376 and common practice);
 * a number that is none of the inputs and no formula.
 */
export function workbookFaults(book: OpenedWorkbook): string[] {
  const formulas = book.formulas();
  const wrong = formulas.filter(
    ({ stored, worked, formula }) =>
      typeof worked !== 'number' || formula.length > 8000 || !isClose(worked, stored),
  );
  const bare: string[] = [];
  for (const sheet of book.file.worksheets) {
    if (sheet.name === 'Inputs') continue;
    sheet.eachRow((row) =>
      row.eachCell((cell) => {
        if (typeof cell.value === 'number') bare.push(`${sheet.name}!${cell.address} is a bare number`);
      }),
    );
  }
  return [
    ...(formulas.length === 0 ? ['has no formulas'] : []),
    ...wrong.map(
      ({ sheet, address, stored, worked, formula }) =>
        `${sheet}!${address} =${formula.slice(0, 200)} comes to ${JSON.stringify(worked)}, not ${stored}`,
    ),
    ...bare,
  ];
}

/** The name of a leaf's cell, found as a person would: by what the sheet of inputs says about it. */
export function nameOfInput(book: OpenedWorkbook, node: FigureNode): string {
  const sheet = book.file.getWorksheet('Inputs');
  const names: string[] = [];
  sheet?.eachRow((row) => {
    const [, label, , , name, source] = Array.isArray(row.values) ? row.values : [];
    if (label === node.label && source === node.source?.text) names.push(String(name));
  });
  const [name] = names;
  if (name === undefined || names.length > 1)
    throw new RangeError(`${names.length} inputs are called "${node.label}"`);
  return name;
}
