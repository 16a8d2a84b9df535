import { afterAll, beforeAll, expect, it } from 'vitest';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';

let test: QuotingWorkshop;

beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterAll(() => test.close());

const compare = (query: object, id = test.costSheetId) =>
  test.request
    .get(`/api/cost-sheets/${id}/comparison`)
    .query({ working: 'true', ...query })
    .set(test.as('read-only'));

it('tells why a sheet costs another amount on another date, leaf by leaf, adding up to the cent', async () => {
  await test.setPrice('2026-03-10', 8);
  const { body } = await compare({ onDate: '2026-03-11', pieces: '2' }).expect(200);
  expect(body).toMatchObject({
    pieces: 2,
    was: { costSheetId: test.costSheetId, onDate: '2026-03-02', basis: 'commission', revision: 2 },
    now: { onDate: '2026-03-11', isComplete: true },
  });
  const { difference, figures } = body;
  const cents = (id: string) => Math.round(Number(figures[id].value) * 100);
  expect(difference.causes).toMatchObject([
    { cause: 'price', changes: [{ kind: 'leaf', was: { value: '6.4' }, now: { value: '8' } }] },
  ]);
  expect(difference.causes[0].changes[0].now.source.record).toMatch(/^price-line:/);
  for (const total of ['cost', 'price']) {
    const causes = difference.causes.map((cause: { effect: Record<string, string> }) => cause.effect[total]);
    const all = [...causes, difference.rounding[total]].reduce((sum, id) => sum + cents(id), 0);
    expect(all).toBe(cents(difference.now[total]) - cents(difference.was[total]));
    expect(all).toBeGreaterThan(0);
  }
  const back = (await compare({}).expect(200)).body;
  expect(back.difference.causes).toEqual([]);
});

it('compares with another basis and another sheet, and names what is not there', async () => {
  const basis = (await compare({ basis: 'shop' }).expect(200)).body;
  expect(basis.now.basis).toBe('shop');
  const asked = (await test.request.get(`/api/cost-sheets/${test.costSheetId}`).set(test.as('maker'))).body;
  const { title: _, ...sheet } = asked;
  const other = await test.request
    .post('/api/cost-sheets')
    .set(test.as('maker'))
    .send({
      title: 'Dearer shelves',
      designId: sheet.designId,
      clientId: null,
      basis: sheet.basis,
      onDate: null,
      quantities: [1],
      terms: { ...sheet.terms, policy: { kind: 'margin', margin: '0.4' } },
    })
    .expect(201);
  const { body } = await compare({ with: other.body.id }).expect(200);
  expect(body.now.title).toBe('Dearer shelves');
  expect(body.difference.causes).toMatchObject([
    {
      cause: 'rule',
      changes: [{ key: 'terms/policy/margin', was: { value: '0.3' }, now: { value: '0.4' } }],
    },
  ]);
  expect(Number(body.figures[body.difference.moved.cost].value)).toBe(0);
  expect(Number(body.figures[body.difference.moved.price].value)).toBeGreaterThan(0);
  const nowhere = await compare({ with: 'nothing' });
  expect([nowhere.status, nowhere.body.errors[0].field]).toEqual([422, 'query.with']);
  const noRevision = await compare({ revision: '9' });
  expect([noRevision.status, noRevision.body.errors[0].field]).toEqual([422, 'revision']);
  await compare({}, 'nothing').expect(404);
});
