import { exampleSheetInput, workshopSettingsSchema } from '@scantling/contracts';
import { recalculate } from '@scantling/figures';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

const HEADERS = 'row,id,name,quantity,material,length,width,thickness,finished,run h,setup h,grade';
const BILL = [
  HEADERS,
  'part,shelf,Shelf,2,ASH-4,"31 1/2""","7 1/16""",3/4,all,,,',
  'operation,plane,Plane and cut,,,,,,,0.5,0.25,owner',
].join('\r\n');

let test: TestApplication;
let designId = '';

beforeAll(async () => {
  test = await startTestApplication();
  const { database } = test;
  await database.workshop.create({
    data: {
      name: 'Test shop',
      currency: 'USD',
      unitSystem: 'imperial',
      settings: workshopSettingsSchema.parse({}),
    },
  });
  await database.labourGrade.create({
    data: { code: 'owner', name: 'Owner', payPerHour: 30, burden: 0.2, productiveShare: 0.75, isOwner: true },
  });
  const supplier = await database.supplier.create({
    data: {
      code: 'yard',
      name: 'Invented Yard',
      currency: 'USD',
      freightPerOrder: 35,
      minimumOrder: 10_000,
    },
  });
  const material = await database.material.create({
    data: {
      code: 'ASH-4',
      name: 'Ash 4/4',
      form: 'rough-lumber',
      nominalThicknessMm: 25.4,
      surfacedThicknessMm: 20.6375,
      yieldFactor: 0.5,
      densityKgM3: 672,
    },
  });
  const item = await database.supplierItem.create({
    data: { supplierId: supplier.id, code: 'A44', description: 'Ash', materialId: material.id },
  });
  const list = await database.priceList.create({
    data: {
      supplierId: supplier.id,
      name: 'spring',
      validFrom: new Date('2026-01-01'),
      currency: 'USD',
      taxIncluded: false,
      taxRate: 0,
      taxRecoverable: 1,
      createdBy: 'test',
    },
  });
  await database.priceLine.create({
    data: { listId: list.id, itemId: item.id, unit: 'board-foot', amount: 6.4, rowNumber: 2 },
  });
  const made = await test.request
    .post('/api/designs')
    .set({ ...test.as('maker'), 'idempotency-key': 'shelf' })
    .send({ code: 'SHELF', name: 'Shelf', description: '', unitSystem: 'imperial' });
  expect(made.status).toBe(201);
  designId = made.body.id;
});
afterAll(() => test.close());

const read = (preview: boolean, file: string, etag: string) =>
  test.request
    .post(`/api/designs/${designId}/bill-file?preview=${preview}`)
    .set({ ...test.as('maker'), 'if-match': etag })
    .attach('file', Buffer.from(file), 'bill.csv');

describe('a bill of materials from a file', () => {
  it('is previewed without a change, with every problem by line and column', async () => {
    const bad = BILL.replace('3/4', 'thick').replace(',owner', ',nobody');
    const { status, body } = await read(true, bad, '"1"');
    expect(status).toBe(200);
    expect(body).toMatchObject({ bill: null, isApplied: false, version: 1 });
    expect(body.problems).toEqual([expect.objectContaining({ line: 2, column: 'thickness' })]);
    const unknown = await read(false, BILL.replace(',owner', ',nobody'), '"1"');
    expect(unknown.body).toMatchObject({ isApplied: false, version: 1 });
    expect(unknown.body.problems[0].message).toContain('nobody');
  });

  it('is taken whole, as the next revision, and comes back unchanged from CSV and XLSX', async () => {
    const { body } = await read(false, BILL, '"1"');
    expect(body).toMatchObject({ problems: [], isApplied: true, version: 2 });
    expect(body.bill.parts[0]).toMatchObject({
      id: 'shelf',
      length: '800.1',
      width: '179.3875',
      thickness: '19.05',
    });
    let version = 2;
    for (const format of ['csv', 'xlsx']) {
      const file = await test.request
        .get(`/api/designs/${designId}/bill-file?format=${format}`)
        .set(test.as('read-only'))
        .buffer(true)
        .parse((response, done) => {
          const chunks: Buffer[] = [];
          response.on('data', (chunk: Buffer) => chunks.push(chunk));
          response.on('end', () => done(null, Buffer.concat(chunks)));
        });
      expect(file.status).toBe(200);
      const again = await test.request
        .post(`/api/designs/${designId}/bill-file`)
        .set({ ...test.as('maker'), 'if-match': `"${version}"` })
        .attach('file', file.body, `bill.${format}`);
      expect(again.body).toMatchObject({ problems: [], isApplied: true, bill: body.bill });
      version = again.body.version;
    }
    expect((await read(false, BILL, '"1"')).status).toBe(412);
    expect(await test.database.designRevision.count({ where: { designId } })).toBe(4);
  });
});

describe('a cost sheet', () => {
  const { terms } = exampleSheetInput;
  const asked = () => ({
    title: 'Shelves',
    designId,
    clientId: null,
    basis: 'shop',
    onDate: '2026-03-01',
    quantities: [1, 5],
    terms,
  });

  it('is worked out with every derivation down to the price list line', async () => {
    const made = await test.request
      .post('/api/cost-sheets')
      .set({ ...test.as('maker'), 'idempotency-key': 'sheet' })
      .send(asked());
    expect([made.status, made.headers.etag]).toEqual([201, '"1"']);
    const worked = await test.request
      .get(`/api/cost-sheets/${made.body.id}/figures?working=true`)
      .set(test.as('read-only'));
    expect(worked.status).toBe(200);
    const { figures, columns } = worked.body;
    const again = recalculate(figures);
    for (const node of Object.values<{ id: string; value: string }>(figures))
      expect(again.get(node.id)?.toString()).toBe(node.value);
    const [one, five] = columns;
    expect(figures[one.materials[0].needed].unit).toBe('m2');
    // (31 1/2 in + 25 mm) x (7 1/16 in + 6 mm) x 2 at 0.5 of 4/4, as board feet by hand
    const boardFeet = ((800.1 + 25) * (179.3875 + 6) * 2) / 0.5 / 92903.04;
    expect(Number(figures[one.materials[0].used].value)).toBeCloseTo(boardFeet, 9);
    expect(Number(figures[five.perPiece.cost].value)).toBeLessThan(Number(figures[one.perPiece.cost].value));
    expect(figures['price/yard/A44/board-foot/0'].source.text).toContain(
      'Invented Yard, spring of 2026-01-01, line 2',
    );
    const plain = await test.request
      .get(`/api/cost-sheets/${made.body.id}/figures`)
      .set(test.as('read-only'));
    expect(plain.body.figures[one.price.netPrice].how).toBeUndefined();
    expect(plain.text.length).toBeLessThan(worked.text.length / 2);
  });

  it("charges a supplier's freight once an order, points at a small order, and leads to the line of the list", async () => {
    const list = await test.request.get('/api/cost-sheets').set(test.as('maker'));
    const { body } = await test.request
      .get(`/api/cost-sheets/${list.body.items[0].id}/figures?working=true`)
      .set(test.as('maker'));
    const { figures, columns, notices, isComplete } = body;
    for (const column of columns) {
      const [freight] = column.freightIn;
      const amount = (id: string) => Number(figures[id].value);
      expect([freight.supplier, freight.class, amount(freight.boughtCost)]).toEqual([
        'yard',
        'direct-materials',
        35,
      ]);
      const paid = amount(freight.charged) + amount(freight.offcutValue) + amount(freight.loss);
      expect(paid).toBeCloseTo(35, 12);
    }
    expect(isComplete).toBe(true);
    // The amounts differ, so each number of pieces is told by itself.
    expect(notices).toEqual(
      [1, 5].map((quantity) =>
        expect.objectContaining({
          kind: 'below-minimum-order',
          record: 'supplier:yard',
          quantities: [quantity],
        }),
      ),
    );
    const [priceList] = await test.database.priceList.findMany({ include: { lines: true } });
    expect(figures['price/yard/A44/board-foot/0'].source.record).toBe(
      `price-line:${priceList?.id}/${priceList?.lines[0]?.id}`,
    );
  });

  it('names the material whose finish is kept in a form that cannot be read', async () => {
    const list = await test.request.get('/api/cost-sheets').set(test.as('maker'));
    const worked = () =>
      test.request.get(`/api/cost-sheets/${list.body.items[0].id}/figures`).set(test.as('maker'));
    await test.database.material.update({ where: { code: 'ASH-4' }, data: { finish: { volumeSolids: 35 } } });
    const refused = await worked();
    expect([refused.status, refused.body.errors[0].field]).toEqual([422, 'materials.ASH-4.finish']);
    await test.database.$executeRaw`update "Material" set finish = null where code = 'ASH-4'`;
    expect((await worked()).status).toBe(200);
  });

  it('says what cannot be priced, where and what to do', async () => {
    const early = await test.request
      .post('/api/cost-sheets')
      .set({ ...test.as('maker'), 'idempotency-key': 'early' })
      .send({ ...asked(), onDate: '2025-06-01' });
    const worked = await test.request.get(`/api/cost-sheets/${early.body.id}/figures`).set(test.as('maker'));
    expect([worked.status, worked.body.isComplete]).toEqual([200, false]);
    const [unpriced] = worked.body.columns[0].unpriced;
    expect(unpriced.field).toContain('bill.parts.0');
    const [notice] = worked.body.notices;
    expect(notice).toMatchObject({ kind: 'no-price', weight: 'missing', about: unpriced.code });
    expect(notice.mend).toContain('import or enter a price');
  });

  it('keeps its design from being removed, and is changed only by who saw its newest version', async () => {
    const design = await test.request.get(`/api/designs/${designId}`).set(test.as('maker'));
    const refused = await test.request
      .delete(`/api/designs/${designId}`)
      .set({ ...test.as('maker'), 'if-match': design.headers.etag });
    expect(refused.status).toBe(409);
    const { body } = await test.request.get('/api/cost-sheets').set(test.as('bookkeeper'));
    const [sheet] = body.items;
    const edit = (etag: string) =>
      test.request
        .put(`/api/cost-sheets/${sheet.id}`)
        .set({ ...test.as('maker'), 'if-match': etag })
        .send({ ...asked(), title: 'Renamed' });
    expect((await edit(`"${sheet.version}"`)).body.title).toBe('Renamed');
    expect((await edit(`"${sheet.version}"`)).status).toBe(412);
  });

  it('is the same through the stateless calculation, which stores nothing', async () => {
    const before = await test.database.costSheet.count();
    const { status, body } = await test.request
      .post('/api/calculations/cost-sheet')
      .set(test.as('read-only'))
      .send(exampleSheetInput);
    expect(status).toBe(200);
    expect(body.figures[body.columns[0].price.netPrice].currency).toBe('EUR');
    expect(await test.database.costSheet.count()).toBe(before);
    const wrong = await test.request
      .post('/api/calculations/cost-sheet')
      .set(test.as('read-only'))
      .send({ ...exampleSheetInput, quantities: [0] });
    expect([wrong.status, wrong.body.errors[0].field]).toEqual([422, 'quantities.0']);
  });

  it('prices from cost alone as well', async () => {
    const { body, status } = await test.request
      .post('/api/calculations/price')
      .set(test.as('read-only'))
      .send({
        currency: 'EUR',
        costOfProduction: '700',
        materials: '200',
        labour: '300',
        machines: '50',
        ownerLabour: '300',
        ownerHours: '10',
        avoidable: '230',
        terms: { discount: '0', policy: { kind: 'margin', margin: '0.3' } },
      });
    expect(status).toBe(200);
    const value = (id: string) => body.figures[id].value;
    expect([
      value(body.netPrice),
      value(body.margin),
      value(body.hourlyEarnings),
      value(body.floorPrice),
    ]).toEqual(['1000', '0.3', '60', '230']);
  });
});
