import { exampleSheetInput } from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { enterShelf, SHELF_BILL } from '../../../../../tests/api/shelf-design.ts';

let test: TestApplication;
let sheetId = '';
let price: { id: string; value: string };

beforeAll(async () => {
  test = await startTestApplication();
  const designId = await enterShelf(test);
  await test.request
    .post(`/api/designs/${designId}/bill-file?preview=false`)
    .set({ ...test.as('maker'), 'if-match': '"1"' })
    .attach('file', Buffer.from(SHELF_BILL), 'bill.csv')
    .expect(200);
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
  sheetId = made.body.id;
  const worked = await test.request.get(`/api/cost-sheets/${sheetId}/figures`).set(test.as('read-only'));
  const id = worked.body.columns[1].price.netPrice;
  price = { id, value: worked.body.figures[id].value };
});
afterAll(() => test.close());

const post = (name: string, body: object) =>
  test.request.post(`/api/cost-sheets/${sheetId}/${name}`).set(test.as('read-only')).send(body);

describe('a question to a stored cost sheet', () => {
  it('is answered from its own figures, under the ids its answer uses', async () => {
    const byName = await post('sensitivity', { quantity: 5, result: 'price/netPrice' }).expect(200);
    const byId = await post('sensitivity', { quantity: 5, result: price.id }).expect(200);
    expect(byName.body).toEqual(byId.body);
    expect(byName.body.result).toBe(price.id);
    expect(byName.body.figures[price.id].value).toBe(price.value);
    expect(byName.body.rows.length).toBeGreaterThan(5);
    const swings = byName.body.rows.map(({ swing }: { swing: string }) =>
      Number(byName.body.figures[swing].value),
    );
    expect(swings).toEqual([...swings].sort((a, b) => b - a));
  });

  it('finds what a term must be for a price, and the sheet with that term has it', async () => {
    const asked = { quantity: 1, result: 'classes/costOfProduction', leaf: 'terms/freight' };
    const { body } = await post('solve', { ...asked, target: { value: '1000' } }).expect(200);
    const freight = body.figures[body.crossings[0].at.value].value;
    expect(body.figures[body.crossings[0].at.residual].value).toBe('0');
    const { body: sheet, headers } = await test.request
      .get(`/api/cost-sheets/${sheetId}`)
      .set(test.as('maker'));
    const { title, designId, clientId, basis, onDate, quantities, terms } = sheet;
    await test.request
      .put(`/api/cost-sheets/${sheetId}`)
      .set({ ...test.as('maker'), 'if-match': headers.etag })
      .send({
        title,
        designId,
        clientId,
        basis,
        onDate,
        quantities,
        terms: { ...terms, freight: Number(freight).toFixed(6) },
      })
      .expect(200);
    const { body: again } = await test.request
      .get(`/api/cost-sheets/${sheetId}/figures`)
      .set(test.as('maker'));
    expect(Number(again.figures[again.columns[0].classes.costOfProduction].value)).toBeCloseTo(1000, 5);
  });

  it('is simulated without the percentage for contingency, at the price the sheet comes to', async () => {
    const uncertain = { 'terms/freight': { low: '800', likely: '900', high: '2000' } };
    const asked = { quantity: 1, uncertain, quoted: { leastMargin: '0.1' } };
    const { body } = await post('risk', asked).expect(200);
    const value = (id: string) => Number(body.figures[id].value);
    const held = await post('risk', { ...asked, changes: { 'terms/contingency': '0.05' } }).expect(200);
    const [bare, added] = [body, held.body].map((answer) =>
      Number(answer.figures[answer.results[0].atMeans].value),
    );
    expect(bare).toBeLessThan(added ?? 0);
    // The freight is all that moves: its mean is (800 + 3600 + 2000) / 6, its sd the square root of (mu - a)(b - mu) / 7.
    const mean = 6400 / 6;
    const sd = Math.sqrt(((mean - 800) * (2000 - mean)) / 7);
    expect(Math.abs(value(body.results[0].spread.sd) / sd - 1)).toBeLessThan(0.03);
    expect(value(body.chances.ofLoss)).toBeLessThan(value(body.chances.ofLowMargin));
    expect(body.figures[body.chances.ofLoss].source.kind).toBe('simulation');
  });

  it('says that a rounded price steps over its target, or which pieces and results there are', async () => {
    const rounded = await post('solve', {
      quantity: 1,
      result: 'price/netPrice',
      leaf: 'terms/freight',
      target: { value: '1001' },
    });
    expect([rounded.body.why, rounded.body.steps.length]).toEqual(['steps-over', 1]);
    const fieldOf = async (body: object) => (await post('sensitivity', body)).body.errors[0].field;
    expect(await fieldOf({ quantity: 3, result: 'price/netPrice' })).toBe('quantity');
    expect(await fieldOf({ quantity: 1, result: 'price/constructor' })).toBe('result');
    await test.request.post('/api/cost-sheets/gone/solve').set(test.as('maker')).expect(422);
  });
});
