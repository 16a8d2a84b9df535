import type { Workbook, WorkbookCell } from '@scantling/figures';
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { openWorkbook } from '../../../../tests/workbooks/open-workbook.ts';
import { renderWorkbook } from './render-workbook.ts';

const text = (content: string): WorkbookCell => ({ kind: 'text', text: content, role: 'label' });
const priced = (name: string, value: string): WorkbookCell => ({
  kind: 'number',
  value,
  format: '#,##0.00',
  role: 'input',
  name,
});

function workbook(rows: readonly (readonly (WorkbookCell | null)[])[], widths = [40, 12]): Workbook {
  const sheet = { name: 'Inputs', widths, headRows: 1, headColumns: 1, rows };
  return { title: 'Bench & "table" &P', date: '2026-03-01', paper: 'a4', sheets: [sheet] };
}

const HOSTILE = [
  '=1+1',
  '+cmd',
  '-2',
  '@SUM(A1)',
  '=HYPERLINK("http://x.example","look")',
  '<script>&amp;"\'',
  ' leading blank',
  'ö 榫卯 𝄞',
];

describe('a workbook of formulas', () => {
  it('gives the same bytes whenever it is written, and says nothing of when', async () => {
    const given = workbook([[text('Price'), priced('price', '12.5')]]);
    const first = await renderWorkbook(given);
    await new Promise((done) => setTimeout(done, 2100));
    const second = await renderWorkbook(given);
    expect(Buffer.from(second).equals(Buffer.from(first))).toBe(true);
    expect(Buffer.from(first).includes(String(new Date().getFullYear() + 1))).toBe(false);
  });

  it('keeps text as text, whatever it begins with or holds', async () => {
    const bytes = await renderWorkbook(workbook(HOSTILE.map((one) => [text(one)])));
    const { file, close } = await openWorkbook(bytes);
    const sheet = file.getWorksheet('Inputs');
    expect(HOSTILE.map((_, row) => sheet?.getCell(row + 1, 1).value)).toEqual(HOSTILE);
    expect(HOSTILE.map((_, row) => sheet?.getCell(row + 1, 1).type)).toEqual(
      HOSTILE.map(() => ExcelJS.ValueType.String),
    );
    close();
  });

  it('mends what no file can hold', async () => {
    const broken = ['a\u0000b\u0008c\u001f', `half ${'\ud800'} a letter`, 'x'.repeat(40_000)];
    const { file, close } = await openWorkbook(
      await renderWorkbook(workbook(broken.map((one) => [text(one)]))),
    );
    const sheet = file.getWorksheet('Inputs');
    expect([1, 2].map((row) => sheet?.getCell(row, 1).value)).toEqual(['a b c ', 'half   a letter']);
    expect(String(sheet?.getCell(3, 1).value)).toHaveLength(32_000);
    close();
  });

  it('unlocks inputs alone and takes numbers only there', async () => {
    const bytes = await renderWorkbook(workbook([[text('Price'), priced('price', '12.5')]]));
    const { file, names, close } = await openWorkbook(bytes);
    const sheet = file.getWorksheet('Inputs');
    expect(names.get('price')).toEqual({ sheet: 'Inputs', address: 'B1' });
    expect(sheet?.getCell('B1').protection).toMatchObject({ locked: false });
    expect(sheet?.getCell('B1').dataValidation).toMatchObject({ type: 'decimal', showErrorMessage: true });
    expect(sheet?.getCell('A1').protection?.locked).not.toBe(false);
    close();
  });

  it('prints on the width of a page with its heads on every page', async () => {
    const rows = [[text('Price'), priced('price', '12.5')], [text('x')]];
    const narrow = await openWorkbook(await renderWorkbook(workbook(rows)));
    const wide = await openWorkbook(await renderWorkbook(workbook(rows, [90, 90])));
    const setup = (book: typeof wide) => book.file.getWorksheet('Inputs')?.pageSetup;
    expect(setup(wide)).toMatchObject({
      orientation: 'landscape',
      paperSize: 9,
      fitToWidth: 1,
      fitToHeight: 0,
      printArea: 'A1:B2',
      printTitlesRow: '1:1',
    });
    expect(setup(narrow)?.orientation).toBe('portrait');
    expect(narrow.file.getWorksheet('Inputs')?.headerFooter.oddFooter).toContain('Bench && "table" &&P');
    narrow.close();
    wide.close();
  });

  it('calculates for programs that read it, and shows its results to those that do not', async () => {
    const doubled: WorkbookCell = {
      kind: 'formula',
      formula: 'price*2',
      value: '25',
      format: '#,##0.00',
      role: 'value',
    };
    const book = await openWorkbook(
      await renderWorkbook(workbook([[text('Price'), priced('price', '12.5'), doubled]])),
    );
    expect(book.at('Inputs', 'C1')).toBe(25);
    book.enter('price', 7);
    expect(book.at('Inputs', 'C1')).toBe(14);
    expect(book.formulas()).toMatchObject([{ stored: 25, formula: 'price*2' }]);
    book.close();
  });
});
