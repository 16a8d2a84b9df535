import { toWorkedCostSheet } from '@scantling/contracts';
import { type CostSheetInput, costSheet } from '@scantling/costing';
import { renderWorkbook } from '@scantling/renderers';
import { expect, it } from 'vitest';
import { workshopSheet } from '../../../tests/bench/workshop-sheet.ts';
import { openWorkbook } from '../../../tests/workbooks/open-workbook.ts';
import { workbookFaults } from '../../../tests/workbooks/workbook-faults.ts';
import { costSheetWorkbook } from './cost-sheet-workbook.ts';

function workbookOf(given: CostSheetInput, title = 'Bench') {
  const worked = toWorkedCostSheet(costSheet(given), { withDerivations: true });
  const facts = ['Invented workshop.'];
  return { worked, workbook: costSheetWorkbook({ title, facts, worked, lengths: 'mm', paper: 'a4' }) };
}

it('stays a working spreadsheet for 200 lines at four numbers of pieces', async () => {
  const { worked, workbook } = workbookOf({ ...workshopSheet(200), quantities: [1, 2, 5, 10] });
  const book = await openWorkbook(await renderWorkbook(workbook));
  expect(workbookFaults(book)).toEqual([]);
  expect(workbook.sheets.map(({ name }) => name)).toEqual([
    'Cost sheet',
    'Materials',
    'Work',
    'Parts',
    'Inputs',
    'Working',
  ]);
  expect(book.row('Cost sheet', 'Pieces').slice(2)).toEqual([1, 2, 5, 10]);
  const prices = worked.columns.map(({ price }) => Number(worked.figures[price.netPrice]?.value));
  expect(book.row('Cost sheet', 'Price, after discount and before tax').slice(2)).toEqual(prices);
  book.close();
}, 60_000);

it('bears names that spreadsheets would read as something else', async () => {
  const hostile = [
    '=1+1',
    'A1',
    'R1C1',
    'TRUE',
    'O\'Brien; "x"',
    '榫卯',
    '<b>&',
    '__proto__',
    'constructor',
    '#REF!',
  ];
  const plain = workshopSheet(20);
  const called = (index: number) => hostile[index % hostile.length] ?? '';
  const { workbook } = workbookOf(
    {
      ...plain,
      bill: {
        ...plain.bill,
        parts: plain.bill.parts.map((part, index) => ({ ...part, name: called(index) })),
        operations: plain.bill.operations.map((one, index) => ({ ...one, name: called(index + 1) })),
      },
      materials: plain.materials.map((material, index) => ({ ...material, name: called(index + 2) })),
    },
    "=cmd|' /C calc'!A0 [x]:*?",
  );
  const book = await openWorkbook(await renderWorkbook(workbook));
  expect(workbookFaults(book)).toEqual([]);
  expect(book.file.getWorksheet('Cost sheet')?.getCell('A1').value).toBe("=cmd|' /C calc'!A0 [x]:*?");
  const wanted = /^(?![A-Za-z]{1,4}\d+$)[A-Za-z]\w*$/;
  expect([...book.names.keys()].filter((name) => !wanted.test(name))).toEqual([]);
  book.close();
});

it('refuses a sheet that was worked out without its derivations', () => {
  const worked = toWorkedCostSheet(costSheet(workshopSheet(4)), { withDerivations: false });
  const given = { title: 'x', facts: [], worked, lengths: 'mm', paper: 'a4' } as const;
  expect(() => costSheetWorkbook(given)).toThrow('there is no such figure');
});
