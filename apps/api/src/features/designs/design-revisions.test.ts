import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { enterShelfShop } from '../../../../../tests/api/shelf-shop.ts';

const PART = {
  id: 'shelf',
  name: 'Shelf',
  quantity: 1,
  material: 'ASH-4',
  length: '800',
  width: '180',
  thickness: '19',
  grain: 'length',
  facesFinished: 'all',
};
const bill = (...parts: object[]) => ({
  assemblies: [],
  parts,
  components: [],
  finishes: [],
  consumables: [],
  operations: [],
});

let test: TestApplication;
let id = '';

beforeAll(async () => {
  test = await startTestApplication();
  await enterShelfShop(test.database);
  const about = { code: 'RACK', name: 'Rack', description: '', unitSystem: 'metric' };
  const made = await test.request
    .post('/api/designs')
    .set({ ...test.as('maker'), 'idempotency-key': 'rack' })
    .send({ ...about, bill: bill(PART) });
  expect(made.status).toBe(201);
  id = made.body.id;
  const parameters = [{ id: 'length', label: 'Length', kind: 'length', value: '900' }];
  const edits = [
    { ...about, bill: bill({ ...PART, length: { formula: 'length' } }), parameters, note: 'Any length' },
    { ...about, bill: bill({ ...PART, id: 'top' }), parameters: [], note: '' },
  ];
  for (const [index, body] of edits.entries()) {
    const edited = await test.request
      .put(`/api/designs/${id}`)
      .set({ ...test.as('maker'), 'if-match': `"${index + 1}"` })
      .send(body);
    expect(edited.status).toBe(200);
  }
});
afterAll(() => test.close());

const read = (path: string) => test.request.get(`/api/designs/${id}${path}`).set(test.as('read-only'));

describe('the revisions of a design', () => {
  it('are listed by page, the newest first, with who made them and why', async () => {
    const first = await read('/revisions?limit=2');
    expect(first.body.items).toMatchObject([
      { number: 3, note: '', parts: 1, parameters: 0 },
      { number: 2, note: 'Any length', parameters: 1 },
    ]);
    const second = await read(`/revisions?limit=2&cursor=${first.body.next}`);
    expect(second.body).toMatchObject({ items: [{ number: 1, note: 'First entered' }], next: null });
    expect(typeof second.body.items[0].madeBy).toBe('string');
    expect((await test.request.get('/api/designs/none/revisions').set(test.as('maker'))).status).toBe(404);
  });

  it('are read as they stood', async () => {
    const { body } = await read('/revisions/2');
    expect(body).toMatchObject({ number: 2, unitSystem: 'metric', parameters: [{ value: '900' }] });
    expect(body.bill.parts[0].length).toEqual({ formula: 'length' });
    expect((await read('/revisions/9')).status).toBe(404);
    expect((await read('/revisions/0')).status).toBe(422);
  });

  it('are compared by row and field', async () => {
    const { body } = await read('/changes?from=1&to=2');
    expect(body).toEqual({
      from: 1,
      to: 2,
      changes: [
        { section: 'parameters', id: 'length', name: 'Length', kind: 'added', fields: [] },
        {
          section: 'parts',
          id: 'shelf',
          name: 'Shelf',
          kind: 'changed',
          fields: [{ field: 'length', before: '800', after: '=length' }],
        },
      ],
    });
    expect((await read('/changes?from=3&to=3')).body.changes).toEqual([]);
    expect((await read('/changes?from=1&to=9')).status).toBe(404);
  });

  it('are brought back as a new one, by makers who saw the newest', async () => {
    const restore = (role: 'maker' | 'read-only', etag: string) =>
      test.request.post(`/api/designs/${id}/revisions/2/restore`).set({ ...test.as(role), 'if-match': etag });
    expect((await restore('read-only', '"3"')).status).toBe(403);
    expect((await restore('maker', '"2"')).status).toBe(412);
    const restored = await restore('maker', '"3"');
    expect([restored.status, restored.headers.etag, restored.body.version]).toEqual([200, '"4"', 4]);
    expect((await read('/changes?from=2&to=4')).body.changes).toEqual([]);
    expect((await read('/revisions?limit=1')).body.items[0].note).toBe('Revision 2 brought back');
  });

  it('come back only while what they name is there', async () => {
    await test.database.material.updateMany({ where: { code: 'ASH-4' }, data: { code: 'ASH-44' } });
    const refused = await test.request
      .post(`/api/designs/${id}/revisions/1/restore`)
      .set({ ...test.as('maker'), 'if-match': '"4"' });
    expect([refused.status, refused.body.errors[0].field]).toEqual([422, 'bill.parts.0.material']);
    expect(await test.database.designRevision.count({ where: { designId: id } })).toBe(4);
  });
});
