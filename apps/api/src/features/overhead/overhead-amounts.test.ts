import { exampleOverheadAmountInput } from '@scantling/contracts';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
  await application.database.workshop.create({
    data: {
      name: 'Invented joinery',
      currency: 'EUR',
      settings: {
        workshopOverhead: {
          base: 'productive-hours',
          plannedBase: '2400',
          actual: { amount: '12500', base: '2200' },
        },
      },
    },
  });
});
afterAll(() => application.close());

it('keeps yearly amounts, each with its one home', async () => {
  const { request, as } = application;
  const post = (change: object) =>
    request
      .post('/api/overhead/amounts')
      .set(as('bookkeeper'))
      .send({ ...exampleOverheadAmountInput, ...change });
  const made = await post({ yearlyAmount: '12000', recoveredAs: null }).expect(201);
  expect((await post({}).expect(409)).body.errors[0].field).toBe('name');
  const homeless = await post({ name: 'Power', home: 'machine-rate', recoveredAs: null }).expect(422);
  expect(homeless.body.errors[0].field).toBe('recoveredAs');
  expect((await post({ name: 'Attic', home: 'attic' }).expect(422)).body.errors[0].field).toBe('home');
  await request
    .put(`/api/overhead/amounts/${made.body.id}`)
    .set({ ...as('maker'), 'if-match': '"1"' })
    .send({ ...exampleOverheadAmountInput, yearlyAmount: '12000', recoveredAs: null, note: 'from March' })
    .expect(200);
});

it('shows rates at planned and at actual base', async () => {
  const { request, as } = application;
  const { body } = await request.get('/api/overhead/recovery').set(as('read-only')).expect(200);
  const [pool] = body.pools;
  const value = (id: string) => Number(body.figures[id].value);
  expect([value(pool.net), value(pool.rate)]).toEqual([12000, 5]);
  expect(value(pool.actual.underRecovered)).toBe(1500);
  expect([value(pool.actual.spending), value(pool.actual.volume)]).toEqual([500, 1000]);
  expect([body.proof.holds, body.proof.findings]).toEqual([true, []]);
});
