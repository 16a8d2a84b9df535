import { writeWorkbook } from '@scantling/renderers';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { rowsOfChange, sendPriceList, untilRead } from '../../../../../tests/api/send-price-list.ts';

let api: TestApplication;
let supplierId: string;
let materialId: string;

beforeAll(async () => {
  api = await startTestApplication();
  const supplier = await api.request
    .post('/api/suppliers')
    .set(api.as('maker'))
    .send({ code: 'YARD', name: 'Invented yard', currency: 'EUR', taxRate: '0.2' })
    .expect(201);
  supplierId = supplier.body.id;
  const material = await api.request
    .post('/api/materials')
    .set(api.as('maker'))
    .send({ code: 'ASH-4/4', name: 'Ash', form: 'rough-lumber' })
    .expect(201);
  materialId = material.body.id;
});

afterAll(() => api.close());

const send = (content: string | Buffer, query: Record<string, string>) =>
  sendPriceList(api, content, { supplierId, ...query });
const rowsOf = (id: string, change: string) => rowsOfChange(api, id, change);
const apply = (id: string, body: object = {}) =>
  api.request.post(`/api/price-imports/${id}/apply`).set(api.as('maker')).send(body);

const FIRST = [
  'code;description;material;unit;price;from',
  'A;Ash 4/4;ASH-4/4;bd ft;6,40;0',
  'A;Ash 4/4;ASH-4/4;bd ft;5,90;100',
  'B;Oak 4/4;;bd ft;1.250,50;0',
  'C;Screws;;pack;4,20;0',
].join('\n');

describe('a price list from a file', () => {
  it('is previewed, applied whole, and the same file again changes nothing', async () => {
    const read = await send(FIRST, { validFrom: '2026-01-01', isComplete: 'true' });
    expect(read).toMatchObject({
      status: 'previewed',
      phase: null,
      currency: 'EUR',
      rowsRead: 4,
      bytesRead: Buffer.byteLength(FIRST),
      bytesTotal: Buffer.byteLength(FIRST),
      found: { format: 'csv', separator: ';', decimalMark: 'comma' },
      counts: { new: 4, unreadable: 0 },
    });
    expect(await api.database.priceLine.count()).toBe(0);
    const applied = await apply(read.id).expect(200);
    expect(applied.body.status).toBe('applied');
    const lines = await api.request
      .get(`/api/price-lists/${applied.body.priceListId}/lines`)
      .query({ limit: 3 })
      .set(api.as('read-only'))
      .expect(200);
    expect(lines.body.items[0]).toMatchObject({
      code: 'A',
      material: 'ASH-4/4',
      unit: 'board-foot',
      amount: '6.4',
      rowNumber: 2,
    });
    expect(lines.body.items[2]).toMatchObject({ code: 'B', amount: '1250.5' });
    expect(lines.body.next).not.toBeNull();

    expect((await apply(read.id).expect(200)).body.status).toBe('applied');
    const again = await send(FIRST, { validFrom: '2026-02-01', isComplete: 'true' });
    expect(again.status).toBe('unchanged');
    expect(await api.database.priceList.count()).toBe(1);
    expect(await api.database.priceLine.count()).toBe(4);
  });

  it('says what is new, dearer, cheaper, unchanged, changed, gone and unreadable', async () => {
    const next = [
      'code;description;unit;price;from;pack',
      'A;;bd ft;6,80;;',
      'A;;bd ft;5,50;100;',
      'B;;bd ft;1250,50;;10',
      'D;;m2;11;;',
      'D;;m2;12;;',
      'E;;cubit;12;;',
    ].join('\n');
    const read = await send(next, { validFrom: '2026-03-01', isComplete: 'true' });
    expect(read.counts).toEqual({
      new: 1,
      dearer: 1,
      cheaper: 1,
      changed: 1,
      unchanged: 0,
      gone: 1,
      unreadable: 2,
    });
    expect(await rowsOf(read.id, 'dearer')).toMatchObject([
      {
        rowNumber: 2,
        currency: 'EUR',
        before: '6.4',
        beforeCurrency: 'EUR',
        line: { amount: '6.8', breakFrom: '0' },
      },
    ]);
    expect(await rowsOf(read.id, 'gone')).toMatchObject([{ line: { code: 'C' }, before: '4.2' }]);
    expect(await rowsOf(read.id, 'unreadable')).toMatchObject([
      { rowNumber: 6, cells: ['D', '', 'm2', '12', '', ''], problems: [{ column: 'code' }] },
      { rowNumber: 7, problems: [{ column: 'unit', message: '"cubit" is no unit a price can be per' }] },
    ]);

    const refused = await apply(read.id).expect(422);
    expect(refused.body.code).toBe('import-unreadable');
    expect(await api.database.priceList.count()).toBe(1);
    await apply(read.id, { leaveOutUnreadable: true }).expect(200);
    expect(await api.database.priceLine.count()).toBe(8);
    const items = await api.database.supplierItem.findMany({ orderBy: { code: 'asc' } });
    // A description or material that the newer file leaves out stays.
    expect(items.map(({ code, description }) => [code, description])).toEqual([
      ['A', 'Ash 4/4'],
      ['B', 'Oak 4/4'],
      ['C', 'Screws'],
      ['D', ''],
    ]);
    expect(items[0]?.materialId).toBe(materialId);

    const same = await send(`${next.replace('D;;m2;12;;\n', '').replace('E;;cubit;12;;', '')}\n`, {
      validFrom: '2026-04-01',
      isComplete: 'true',
    });
    expect(same.counts).toMatchObject({ unchanged: 4, new: 0, gone: 0, changed: 0 });
    await api.request.post(`/api/price-imports/${same.id}/discard`).set(api.as('maker')).expect(200);
    const late = await apply(same.id).expect(409);
    expect(late.body.code).toBe('import-not-ready');
    expect(await api.database.fileImportRow.count({ where: { importId: same.id } })).toBe(0);
  });

  it('waits for a mapping it cannot guess and remembers it for the supplier', async () => {
    const odd = 'Kennung;Netto\nX-1;3,50\n';
    const read = await send(odd, { validFrom: '2026-05-01' });
    expect(read).toMatchObject({
      status: 'waiting',
      headers: ['Kennung', 'Netto'],
      missingColumns: ['code', 'unit', 'price'],
    });
    await api.request
      .put(`/api/price-imports/${read.id}/mapping`)
      .set(api.as('maker'))
      .send({ columns: { code: 'Kennung', price: 'Netto' }, unit: 'each' })
      .expect(200);
    expect(await untilRead(api, read.id)).toMatchObject({ status: 'previewed', counts: { new: 1, gone: 0 } });
    const later = await send('Netto;Kennung\n3,60;X-2\n', { validFrom: '2026-05-02' });
    expect(later).toMatchObject({ status: 'previewed', counts: { new: 1 }, mapping: { unit: 'each' } });
  });

  it('takes pasted cells', async () => {
    const { body } = await api.request
      .post('/api/price-imports/pasted')
      .set(api.as('maker'))
      .send({ supplierId, validFrom: '2026-05-03', text: 'code\tunit\tprice\nP-1\tsheet\t48.00\n' })
      .expect(202);
    expect(await untilRead(api, body.id)).toMatchObject({
      status: 'previewed',
      counts: { new: 1 },
      found: { separator: '\t' },
    });
  });

  it('says why a file cannot be read, and who may send one', async () => {
    expect(await send('%PDF-1.7', { validFrom: '2026-05-04' })).toMatchObject({
      status: 'failed',
      problem: expect.stringContaining('PDF'),
    });
    await api.request
      .post('/api/price-imports')
      .query({ supplierId, validFrom: 'soon' })
      .set(api.as('maker'))
      .attach('file', Buffer.from('x'), 'x.csv')
      .expect(422);
    await api.request
      .post('/api/price-imports')
      .query({ supplierId, validFrom: '2026-05-04' })
      .set(api.as('read-only'))
      .attach('file', Buffer.from('x'), 'x.csv')
      .expect(403);
  });

  it('takes a workbook, and not more than 20 MB', async () => {
    const rows = [
      ['code', 'unit', 'price'],
      ['W-1', 'sheet', { number: '48.25' }],
    ];
    const bytes = Buffer.from(await writeWorkbook([{ name: 'Prices', rows }]));
    const read = await send(bytes, { validFrom: '2026-05-04' });
    expect(read).toMatchObject({ status: 'previewed', found: { format: 'xlsx', separator: null } });
    expect(await rowsOf(read.id, 'new')).toMatchObject([
      { rowNumber: 2, line: { amount: '48.25', unit: 'sheet' } },
    ]);
    const large = await api.request
      .post('/api/price-imports')
      .query({ supplierId, validFrom: '2026-05-04' })
      .set(api.as('maker'))
      .attach('file', Buffer.alloc(21 * 1024 * 1024, 'x'), 'large.csv');
    expect([large.status, large.body.code]).toEqual([413, 'request-too-large']);
  });

  it('goes on with a reading whose process ended', async () => {
    const read = await send('code;unit;price\nZ;each;1\n', { validFrom: '2026-05-05' });
    await api.database
      .$executeRaw`update "FileImport" set status = 'reading', "updatedAt" = now() - interval '1 hour' where id = ${read.id}`;
    await api.request.get(`/api/price-imports/${read.id}`).set(api.as('maker')).expect(200);
    expect(await untilRead(api, read.id)).toMatchObject({
      status: 'previewed',
      rowsRead: 1,
      counts: { new: 1 },
    });
  });
});
