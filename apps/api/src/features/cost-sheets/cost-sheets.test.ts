import { exampleSheetInput } from '@scantling/contracts';
import { recalculate } from '@scantling/figures';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { enterShelf, SHELF_BILL } from '../../../../../tests/api/shelf-design.ts';

let test: TestApplication;
let designId = '';

beforeAll(async () => {
  test = await startTestApplication();
  designId = await enterShelf(test);
});
afterAll(() => test.close());

const read = (preview: boolean, file: string, etag: string) =>
  test.request
    .post(`/api/designs/${designId}/bill-file?preview=${preview}`)
    .set({ ...test.as('maker'), 'if-match': etag })
    .attach('file', Buffer.from(file), 'bill.csv');

describe('a bill of materials from a file', () => {
  it('is previewed without a change, with every problem by line and column', async () => {
    const bad = SHELF_BILL.replace('3/4', 'thick').replace(',owner', ',nobody');
    const { status, body } = await read(true, bad, '"1"');
    expect(status).toBe(200);
    expect(body).toMatchObject({ bill: null, isApplied: false, version: 1 });
    expect(body.problems).toEqual([expect.objectContaining({ line: 2, column: 'thickness' })]);
    const unknown = await read(false, SHELF_BILL.replace(',owner', ',nobody'), '"1"');
    expect(unknown.body).toMatchObject({ isApplied: false, version: 1 });
    expect(unknown.body.problems[0].message).toContain('nobody');
  });

  it('is taken whole, as the next revision, and comes back unchanged from CSV and XLSX', async () => {
    const { body } = await read(false, SHELF_BILL, '"1"');
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
    expect((await read(false, SHELF_BILL, '"1"')).status).toBe(412);
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
