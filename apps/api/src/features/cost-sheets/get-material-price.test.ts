import { exampleSheetInput } from '@scantling/contracts';
import { recalculate } from '@scantling/figures';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { enterShelf, SHELF_BILL } from '../../../../../tests/api/shelf-design.ts';

let test: TestApplication;
let designId = '';
let materialId = '';

beforeAll(async () => {
  test = await startTestApplication();
  designId = await enterShelf(test);
  await test.request
    .post(`/api/designs/${designId}/bill-file?preview=false`)
    .set({ ...test.as('maker'), 'if-match': '"1"' })
    .attach('file', Buffer.from(SHELF_BILL), 'bill.csv')
    .expect(200);
  materialId = (await test.database.material.findUniqueOrThrow({ where: { code: 'ASH-4' } })).id;
  const yard = await test.database.supplier.findUniqueOrThrow({ where: { code: 'yard' } });
  // The newer list names a break only: the price from 0 of the older one holds on beside it.
  await enterList(yard.id, '2026-02-01', 'A44', 'board-foot', '4', '20');
});
afterAll(() => test.close());

function enterList(
  supplierId: string,
  validFrom: string,
  code: string,
  unit: string,
  amount: string,
  breakFrom = '0',
) {
  return test.request
    .post('/api/price-lists')
    .set(test.as('maker'))
    .send({
      supplierId,
      name: `List of ${validFrom}`,
      validFrom,
      taxRate: '0',
      taxRecoverable: '1',
      lines: [{ code, material: 'ASH-4', unit, amount, breakFrom }],
    })
    .expect(201);
}

async function sheetLine(quantity: number) {
  const made = await test.request
    .post('/api/cost-sheets')
    .set({ ...test.as('maker'), 'idempotency-key': `used-${quantity}` })
    .send({
      title: 'Shelves',
      designId,
      clientId: null,
      basis: 'shop',
      onDate: '2026-03-01',
      quantities: [quantity],
      terms: exampleSheetInput.terms,
    })
    .expect(201);
  const { body } = await test.request
    .get(`/api/cost-sheets/${made.body.id}/figures?working=true`)
    .set(test.as('maker'))
    .expect(200);
  return { line: body.columns[0].materials[0], figures: body.figures };
}

function askPrice(query: object, id = materialId) {
  return test.request
    .get(`/api/materials/${id}/price`)
    .query({ onDate: '2026-03-01', working: 'true', ...query })
    .set(test.as('read-only'));
}

describe('the price of a material on a day', () => {
  it.each([1, 5, 20])(
    "is the cost sheet's for the same need of %i pieces, at every break",
    async (pieces) => {
      const { line, figures } = await sheetLine(pieces);
      const { body } = await askPrice({
        quantity: Number(figures[line.used].value).toFixed(6),
        unit: 'board-foot',
      }).expect(200);
      const amountOf = (id: string) => Number(body.figures[id].value);
      expect(body.price.rule).toBe(line.rule);
      expect(amountOf(body.price.cost)).toBeCloseTo(Number(figures[line.boughtCost].value), 4);
      expect(amountOf(body.price.bought)).toBeCloseTo(Number(figures[line.bought].value), 5);
      const again = recalculate(body.figures);
      for (const node of Object.values<{ id: string; value: string }>(body.figures))
        expect(again.get(node.id)?.toString()).toBe(node.value);
    },
  );

  it('names the list each break stands on, an older one where it holds on from there', async () => {
    const few = await askPrice({ quantity: '2', unit: 'board-foot' }).expect(200);
    expect(few.body.price).toMatchObject({ list: { name: 'spring', date: '2026-01-01' } });
    expect(few.body.figures[few.body.price.cost].value).toBe('12.8');
    const many = await askPrice({ quantity: '30', unit: 'board-foot' }).expect(200);
    expect(many.body.price.list.date).toBe('2026-02-01');
    expect(many.body.figures[many.body.price.cost].value).toBe('120');
  });

  it('takes a need in any unit the material has, and says which there are', async () => {
    const { body } = await askPrice({ quantity: '1', unit: 'square-metre' }).expect(200);
    expect(body.units).toEqual(['board-foot', 'square-metre']);
    // 1 m2 of 4/4 is 1 / 0.09290304 board feet: NIST Handbook 44 counts a board foot as 144 cubic inches.
    expect(Number(body.figures[body.price.used].value)).toBeCloseTo(10.763_910_4, 6);
    // Asked in one unit, priced in another: by way of the unit of use.
    const cubic = await askPrice({ quantity: '0.0254', unit: 'cubic-metre' }).expect(200);
    expect(Number(cubic.body.figures[cubic.body.price.used].value)).toBeCloseTo(10.763_910_4, 6);
  });

  it('is none before the first list, and refuses what is no need', async () => {
    const early = await askPrice({ onDate: '2025-01-01' }).expect(200);
    expect(early.body).toMatchObject({ price: null, unit: 'square-metre' });
    const zero = await askPrice({ quantity: '0' });
    expect(zero.status).toBe(422);
    expect(zero.body.errors[0].field).toBe('query.quantity');
    await askPrice({}, 'nothing').expect(404);
  });
});
