import { type FigureTable, recalculate } from '@scantling/figures';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type OpenedWorkbook, openWorkbook } from '../workbooks/open-workbook.ts';
import { isClose, nameOfInput, workbookFaults } from '../workbooks/workbook-faults.ts';
import { startTestApplication, type TestApplication } from './application.ts';
import { downloadFile } from './download-file.ts';

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication({ clock: () => new Date('2026-11-25T10:00:00Z') });
  await test.request.post('/api/demo').set(test.as('owner')).expect(200);
}, 240_000);
afterAll(() => test.close());

async function open(address: string): Promise<OpenedWorkbook> {
  const file = await downloadFile(test, address, 'read-only');
  expect(file.status).toBe(200);
  return openWorkbook(file.body);
}

async function read(address: string) {
  const { body } = await test.request.get(address).set(test.as('read-only')).expect(200);
  return body;
}

/** Changes a leaf in sheet and table alike. @returns the value of a figure with the change */
function change(book: OpenedWorkbook, figures: FigureTable, key: RegExp, by: number): (id: string) => number {
  const leaf = Object.values(figures).find(({ id }) => key.test(id));
  if (leaf === undefined) throw new RangeError(`no leaf is called ${String(key)}`);
  const value = Number((Number(leaf.value) + by).toFixed(6));
  book.enter(nameOfInput(book, leaf), value);
  const again = recalculate(figures, { [leaf.id]: value });
  return (id) => again.get(id)?.toNumber() ?? Number.NaN;
}

describe('every rate of the demo as a spreadsheet', () => {
  it('has a row for each tool that comes to its rates on all bases, and follows a changed tariff', async () => {
    const book = await open('/api/tool-rates/workbook?year=2026');
    expect(workbookFaults(book)).toEqual([]);
    const { items } = await read('/api/tools?limit=100');
    expect(items.length).toBe(25);
    const faults: string[] = [];
    const worked = new Map<string, { figures: FigureTable; rates: { basis: string; perHour: string }[] }>();
    for (const { id, name } of items)
      worked.set(name, await read(`/api/tools/${id}/rates?working=true&year=2026`));
    const compare = (valueIn: (name: string, figure: string) => number) => {
      for (const [name, { rates }] of worked) {
        const wanted = ['replacement', 'book', 'marginal'].map((basis) =>
          valueIn(name, rates.find((rate) => rate.basis === basis)?.perHour ?? ''),
        );
        const shown = book.row('Machine hours', name).slice(5, 8);
        if (!wanted.every((value, at) => isClose(shown[at], value)))
          faults.push(`${name}: ${JSON.stringify(shown)}, not ${wanted.join(', ')}`);
      }
    };
    compare((name, figure) => Number(worked.get(name)?.figures[figure]?.value));
    const tariff = Object.values(worked.values().next().value?.figures ?? {}).find(
      ({ id }) => id === 'shop/electricity-per-kwh',
    );
    if (tariff === undefined) throw new RangeError('power has no tariff');
    book.enter(nameOfInput(book, tariff), 0.47);
    compare((name, figure) => {
      const figures = worked.get(name)?.figures ?? {};
      const changes = figures[tariff.id] === undefined ? {} : { [tariff.id]: '0.47' };
      return recalculate(figures, changes).get(figure)?.toNumber() ?? Number.NaN;
    });
    expect(faults).toEqual([]);
    book.close();
  }, 120_000);

  it.each([2022, 2024, 2026])('has the register of %i with the schedule of each tool', async (year) => {
    const book = await open(`/api/tool-register/file?format=xlsx&year=${year}`);
    expect(workbookFaults(book)).toEqual([]);
    const { rows, totals, figures } = await read(`/api/tool-register?working=true&year=${year}`);
    const names = ['opening', 'addition', 'depreciation', 'disposed', 'closing'];
    const compare = (valueIn: (figure: string) => number) => {
      for (const row of [...rows, { ...totals, name: 'All tools' }]) {
        const shown = book.row(`Register ${year}`, row.name).slice(4, 9);
        expect([
          row.name,
          ...shown.map((value, at) => isClose(value, valueIn(row[names[at] ?? '']))),
        ]).toEqual([row.name, ...names.map(() => true)]);
      }
    };
    compare((id) => Number(figures[id].value));
    compare(change(book, figures, /^machine\/table-saw\/book-cost$/, 333.33));
    book.close();
  });

  it('has the labour rates, and follows changed pay', async () => {
    const book = await open('/api/labour-rates/workbook');
    expect(workbookFaults(book)).toEqual([]);
    const { rates, figures } = await read('/api/labour-rates?working=true');
    const compare = (valueIn: (figure: string) => number) => {
      for (const { name, pay, paidHour, perHour } of rates)
        expect([name, ...book.row('Labour rates', name).slice(3, 6).map(Number)]).toEqual([
          name,
          ...[pay, paidHour, perHour].map((id) => expect.closeTo(valueIn(id), 9)),
        ]);
    };
    compare((id) => Number(figures[id].value));
    compare(change(book, figures, /^labour\/owner\/pay-per-hour$/, 4.5));
    book.close();
  });

  it('has the overhead rates with their proof', async () => {
    const book = await open('/api/overhead/recovery/workbook');
    expect(workbookFaults(book)).toEqual([]);
    const { pools, proof, figures } = await read('/api/overhead/recovery?working=true');
    const shown = pools.flatMap(({ name }: { name: string }) => book.row('Pools', name).slice(2, 4));
    const wanted = pools.flatMap(({ net, rate }: { net: string; rate: string }) => [net, rate]);
    shown.push(book.row('Proof', 'All amounts')[2], book.row('Proof', 'Without a home')[2]);
    wanted.push(proof.total, proof.rest);
    expect(shown.length).toBe(6);
    expect(
      shown.filter((value: unknown, at: number) => !isClose(value, Number(figures[wanted[at]].value))),
    ).toEqual([]);
    book.close();
  });
});

it('a price from cost alone is a spreadsheet too, and follows a changed margin', async () => {
  const body = {
    currency: 'EUR',
    costOfProduction: '700',
    materials: '200',
    labour: '300',
    machines: '50',
    ownerLabour: '300',
    ownerHours: '10',
    avoidable: '230',
    terms: { discount: '0.02', policy: { kind: 'margin', margin: '0.3' } },
  };
  const send = (path: string) => test.request.post(path).set(test.as('read-only')).send(body);
  const file = await send('/api/calculations/price/workbook')
    .buffer(true)
    .parse((response, done) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () => done(null, Buffer.concat(parts)));
    });
  expect(file.status).toBe(200);
  const book = await openWorkbook(file.body);
  expect(workbookFaults(book)).toEqual([]);
  const { body: worked } = await send('/api/calculations/price');
  const rows = [
    ['List price', 'listPrice'],
    ['Price, after discount and before tax', 'netPrice'],
    ['Margin on the price', 'margin'],
    ['What an hour of the owner earns', 'hourlyEarnings'],
    ['Floor price, at which the owner earns 0 an hour', 'floorPrice'],
  ] as const;
  const compare = (valueIn: (figure: string) => number) => {
    for (const [label, name] of rows)
      expect([label, book.row('Price', label)[2]]).toEqual([label, expect.closeTo(valueIn(worked[name]), 9)]);
  };
  compare((id) => Number(worked.figures[id].value));
  compare(change(book, worked.figures, /^terms\/policy\/margin$/, 0.085));
  book.close();
});
