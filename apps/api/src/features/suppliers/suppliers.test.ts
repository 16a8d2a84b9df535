import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

let api: TestApplication;

beforeAll(async () => {
  api = await startTestApplication();
});

afterAll(() => api.close());

describe.each([
  ['/api/suppliers', { code: 'K', name: 'Invented', currency: 'EUR' }],
  ['/api/materials', { code: 'K', name: 'Invented', form: 'sheet', thicknessMm: '18', finish: null }],
])('%s', (path, given) => {
  it('are entered, read, changed and removed', async () => {
    const as = api.as('bookkeeper');
    const made = await api.request.post(path).set(as).send(given).expect(201);
    expect(made.body).toMatchObject({ ...given, version: 1 });
    const { id } = made.body;
    const taken = await api.request.post(path).set(as).send(given).expect(409);
    expect(taken.body.errors[0].field).toBe('code');
    await api.request.put(`${path}/${id}`).set(as).send(given).expect(428);
    const changed = await api.request
      .put(`${path}/${id}`)
      .set(as)
      .set('if-match', made.headers.etag ?? '')
      .send({ ...given, name: 'Renamed' })
      .expect(200);
    expect(changed.body).toMatchObject({ name: 'Renamed', version: 2 });
    await api.request.put(`${path}/${id}`).set(as).set('if-match', '"1"').send(given).expect(412);
    const read = await api.request.get(`${path}/${id}`).set(api.as('read-only')).expect(200);
    expect(read.body).toEqual(changed.body);
    await api.request.delete(`${path}/${id}`).set(api.as('read-only')).set('if-match', '"2"').expect(403);
    await api.request.delete(`${path}/${id}`).set(as).set('if-match', '"2"').expect(204);
    await api.request.get(`${path}/${id}`).set(as).expect(404);
  });

  it('are listed by code, page by page, and searched', async () => {
    const as = api.as('maker');
    for (const code of ['N-3', 'N-1', 'N-2'])
      await api.request
        .post(path)
        .set(as)
        .send({ ...given, code })
        .expect(201);
    const first = await api.request.get(path).query({ limit: 2, search: 'n-' }).set(as).expect(200);
    const rest = await api.request
      .get(path)
      .query({ cursor: first.body.next, search: 'n-' })
      .set(as)
      .expect(200);
    const codes = [...first.body.items, ...rest.body.items].map(({ code }) => code);
    expect(codes).toEqual(['N-1', 'N-2', 'N-3']);
    await api.request.get(path).query({ cursor: 'nonsense' }).set(as).expect(422);
  });
});

it('keeps a supplier with price lists and a material with linked articles', async () => {
  const as = api.as('owner');
  const supplier = await api.request
    .post('/api/suppliers')
    .set(as)
    .send({ code: 'S', name: 'S', currency: 'EUR' })
    .expect(201);
  const material = await api.request
    .post('/api/materials')
    .set(as)
    .send({ code: 'M', name: 'M', form: 'each' })
    .expect(201);
  const lines = [{ code: 'A', unit: 'each', amount: '1', material: 'M' }];
  const list = { supplierId: supplier.body.id, name: 'L', validFrom: '2026-01-01', lines };
  await api.request.post('/api/price-lists').set(as).send(list).expect(201);
  for (const [path, id] of [
    ['suppliers', supplier.body.id],
    ['materials', material.body.id],
  ]) {
    const refused = await api.request.delete(`/api/${path}/${id}`).set(as).set('if-match', '"1"').expect(409);
    expect(refused.body.code).toBe('still-in-use');
  }
});

it('names the field of a material that cannot be', async () => {
  const refused = await api.request
    .post('/api/materials')
    .set(api.as('maker'))
    .send({
      code: 'R',
      name: 'R',
      form: 'rough-lumber',
      nominalThicknessMm: '25.4',
      surfacedThicknessMm: '26',
    })
    .expect(422);
  expect(refused.body.errors[0].field).toBe('surfacedThicknessMm');
});
