import type { WorkedCostSheet } from '@scantling/contracts';
import { type FigureNode, recalculate } from '@scantling/figures';
import { minorUnits } from '@scantling/money';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { downloadFile } from '../../../../../tests/api/download-file.ts';
import { type OpenedWorkbook, openWorkbook } from '../../../../../tests/workbooks/open-workbook.ts';
import { isClose, nameOfInput, workbookFaults } from '../../../../../tests/workbooks/workbook-faults.ts';

type Column = WorkedCostSheet['columns'][number];
type Sheet = { id: string; title: string; unitSystem: string };

/** Every line of the front that each cost sheet has, and the figure it shows. */
const FRONT: readonly (readonly [label: string, pick: (column: Column) => string | null])[] = [
  ['Direct materials', ({ classes }) => classes.directMaterials],
  ['Bought-in components', ({ classes }) => classes.boughtIn],
  ['Direct labour', ({ classes }) => classes.directLabour],
  ['Subcontract', ({ classes }) => classes.subcontract],
  ['Prime cost', ({ classes }) => classes.primeCost],
  ['Machines', ({ classes }) => classes.machines],
  ['Consumables', ({ classes }) => classes.consumables],
  ['Workshop overhead', ({ classes }) => classes.workshopOverhead],
  ['Works cost', ({ classes }) => classes.worksCost],
  ['Administration overhead', ({ classes }) => classes.administrationOverhead],
  ['Freight to the client', ({ classes }) => classes.freight],
  ['Contingency', ({ classes }) => classes.contingency],
  ['Cost of production', ({ classes }) => classes.costOfProduction],
  ['List price', ({ price }) => price.listPrice],
  ['Price, after discount and before tax', ({ price }) => price.netPrice],
  ['Profit', ({ price }) => price.profit],
  ['Margin on the price', ({ price }) => price.margin],
  ['Markup on cost', ({ price }) => price.markup],
  ['What an hour of the owner earns', ({ price }) => price.hourlyEarnings],
  ['Floor price, at which the owner earns 0 an hour', ({ price }) => price.floorPrice],
  ['Cost of a piece', ({ perPiece }) => perPiece.cost],
  ['Price of a piece', ({ perPiece }) => perPiece.price],
  ['Hours of a piece', ({ perPiece }) => perPiece.hours],
  ['Work, all hands', ({ hours }) => hours.work],
  ['Glue and drying', ({ hours }) => hours.elapsed],
  ['Owner, with quoting, buying and delivery', ({ hours }) => hours.owner],
];

/** Lines of the front that do not show what the product has: money to the cent, everything else to a billionth. */
function frontFaults(book: OpenedWorkbook, worked: WorkedCostSheet, value: (id: string) => number): string[] {
  return FRONT.flatMap(([label, pick]) => {
    const cells = book.row('Cost sheet', label).slice(2);
    return worked.columns.flatMap((column, at) => {
      const id = pick(column);
      if (id === null) return [];
      const [shown, wanted] = [cells[at], value(id)];
      const node = worked.figures[id];
      const half = 0.5 / 10 ** minorUnits(worked.currency);
      const isSame =
        node?.unit === 'money'
          ? typeof shown === 'number' && Math.abs(shown - wanted) < half / 100
          : isClose(shown, wanted);
      return isSame ? [] : [`${label} of ${column.quantity}: ${JSON.stringify(shown)}, not ${wanted}`];
    });
  });
}

/** Leaves a maker would change, by their keys: a price, hours, pay, a yield, a length, a freight, a margin. */
const CHANGES: readonly (readonly [key: RegExp, change: (value: number) => number])[] = [
  [/^price\/.*\/0$/, (price) => price * 1.17],
  [/^bill\/operation [^/]+\/run$/, (hours) => hours + 0.75],
  [/^labour\/[^/]+\/pay-per-hour$/, (pay) => pay + 3.35],
  [/^material\/[^/]+\/yield$/, (share) => share - 0.07],
  [/^(?:bill\/part [^/]+\/length|parameter\/length)$/, (length) => length + 63.5],
  [/^terms\/freight$/, (freight) => freight + 41.25],
  [/^terms\/policy\/(?:margin|markup)$/, (share) => share + 0.045],
  [/^quantity\/1$/, (pieces) => pieces + 2],
];

function enter(book: OpenedWorkbook, node: FigureNode, value: number, unitSystem: string): void {
  const isInInches = node.unit === 'mm' && unitSystem === 'imperial';
  book.enter(nameOfInput(book, node), isInInches ? value / 25.4 : value);
}

let test: TestApplication;
let sheets: readonly Sheet[] = [];
beforeAll(async () => {
  test = await startTestApplication({ clock: () => new Date('2026-11-25T10:00:00Z') });
  await test.request.post('/api/demo').set(test.as('owner')).expect(200);
  sheets = (await test.request.get('/api/cost-sheets').set(test.as('read-only'))).body.items;
}, 240_000);
afterAll(() => test.close());

async function open(address: string, role: 'owner' | 'read-only' = 'read-only') {
  const file = await downloadFile(test, address, role);
  expect([file.status, file.headers['content-type']]).toEqual([
    200,
    'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  ]);
  return { bytes: file.body, book: await openWorkbook(file.body) };
}

async function workedOut(address: string): Promise<WorkedCostSheet> {
  const { body } = await test.request.get(`${address}?working=true`).set(test.as('read-only')).expect(200);
  return body;
}

describe('every cost sheet of the demo as a spreadsheet', () => {
  it('comes to what the product says, and follows changed inputs as the product does', async () => {
    expect(sheets.length).toBeGreaterThan(5);
    const moved = new Set<string>();
    for (const { id, title, unitSystem } of sheets) {
      const { book } = await open(`/api/cost-sheets/${id}/workbook`);
      const worked = await workedOut(`/api/cost-sheets/${id}/figures`);
      expect([title, ...workbookFaults(book)]).toEqual([title]);
      const stands = frontFaults(book, worked, (figure) => Number(worked.figures[figure]?.value));
      expect([title, ...stands]).toEqual([title]);

      const changes: Record<string, string> = {};
      for (const [key, change] of CHANGES) {
        const leaf = Object.values(worked.figures).find((node) => key.test(node.id));
        if (leaf === undefined) continue;
        const value = Number(change(Number(leaf.value)).toFixed(6));
        changes[leaf.id] = String(value);
        enter(book, leaf, value, unitSystem);
        const again = recalculate(worked.figures, changes);
        const priceOf = (values: (figure: string) => number) =>
          worked.columns.map(({ price, hours }) => [values(price.netPrice), values(hours.work)]);
        const faults = frontFaults(book, worked, (figure) => again.get(figure)?.toNumber() ?? Number.NaN);
        expect([title, leaf.id, ...faults]).toEqual([title, leaf.id]);
        const before = priceOf((figure) => Number(worked.figures[figure]?.value));
        const after = priceOf((figure) => again.get(figure)?.toNumber() ?? Number.NaN);
        if (JSON.stringify(before) !== JSON.stringify(after)) moved.add(String(key));
      }
      book.close();
    }
    // Each kind of change was there to be made, and made a difference somewhere.
    expect([...moved].sort()).toEqual(CHANGES.map(([key]) => String(key)).sort());
  }, 240_000);

  it('gives the same bytes for the same sheet, under its title', async () => {
    const [sheet] = sheets;
    const address = `/api/cost-sheets/${sheet?.id}/workbook`;
    const first = await downloadFile(test, address, 'read-only');
    const second = await downloadFile(test, address, 'read-only');
    expect(second.body.equals(first.body)).toBe(true);
    expect(first.headers['content-disposition']).toContain('.xlsx');
    await test.request
      .get('/api/cost-sheets/0193f6a0-7c11-7000-8000-00000000dead/workbook')
      .set(test.as('read-only'))
      .expect(404);
  });
});

describe('the cost sheets behind the demo’s sent quotes', () => {
  it('come to what was frozen, for the owner', async () => {
    const rows = await test.database.quoteRevision.findMany({ where: { sentAt: { not: null } } });
    const lines = rows.flatMap((row) => {
      const kept = row.working as { sheets: Record<string, { unit: 'mm' | 'in' }> };
      return Object.entries(kept.sheets).map(([lineId, { unit }]) => ({ id: row.id, lineId, unit }));
    });
    expect(lines.length).toBeGreaterThan(2);
    for (const { id, lineId } of lines) {
      const address = `/api/quote-revisions/${id}/lines/${lineId}`;
      const { book } = await open(`${address}/workbook`, 'owner');
      const worked = await workedOut(`${address}/figures`);
      expect([lineId, ...workbookFaults(book)]).toEqual([lineId]);
      const faults = frontFaults(book, worked, (figure) => Number(worked.figures[figure]?.value));
      expect([lineId, ...faults]).toEqual([lineId]);
      expect(book.file.getWorksheet('Cost sheet')?.getCell('A2').value).toContain('frozen');
      book.close();
    }
    const [line] = lines;
    await test.request
      .get(`/api/quote-revisions/${line?.id}/lines/${line?.lineId}/workbook`)
      .set(test.as('maker'))
      .expect(403);
  }, 120_000);
});
