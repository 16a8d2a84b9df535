import { exampleSheetInput } from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { enterShelf, SHELF_BILL } from '../../../../../tests/api/shelf-design.ts';

let test: TestApplication;

beforeAll(async () => {
  test = await startTestApplication();
  const designId = await enterShelf(test);
  await test.request
    .post(`/api/designs/${designId}/bill-file`)
    .set({ ...test.as('maker'), 'if-match': '"1"' })
    .attach('file', Buffer.from(SHELF_BILL), 'bill.csv');
  const made = await test.request
    .post('/api/cost-sheets')
    .set({ ...test.as('maker'), 'idempotency-key': 'sheet' })
    .send({
      title: 'Shelves',
      designId,
      clientId: null,
      basis: 'shop',
      onDate: '2026-03-01',
      quantities: [1, 5],
      terms: exampleSheetInput.terms,
    });
  expect(made.status).toBe(201);
});
afterAll(() => test.close());

describe('what a supplier asks of an order', () => {
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
});
