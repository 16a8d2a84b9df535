import { exampleClientInput } from '@scantling/contracts';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
});
afterAll(() => application.close());

it('keeps clients, page by page in the order of their names', async () => {
  const { request, as } = application;
  for (const name of ['Carla', 'Alma', 'Bruno'])
    await request
      .post('/api/clients')
      .set(as('bookkeeper'))
      .send({ ...exampleClientInput, name })
      .expect(201);
  const first = await request.get('/api/clients?limit=2').set(as('read-only')).expect(200);
  const names = (body: { items: { name: string }[] }) => body.items.map((item) => item.name);
  expect(names(first.body)).toEqual(['Alma', 'Bruno']);
  const next = await request
    .get(`/api/clients?limit=2&cursor=${first.body.next}`)
    .set(as('read-only'))
    .expect(200);
  expect([names(next.body), next.body.next]).toEqual([['Carla'], null]);
});

it('changes and removes one at the version that was read', async () => {
  const { request, as } = application;
  const { id } = await application.database.client.findFirstOrThrow({ where: { name: 'Alma' } });
  const address = `/api/clients/${id}`;
  const maker = (etag: string) => ({ ...as('maker'), 'if-match': etag });
  const changed = { ...exampleClientInput, name: 'Alma', email: null };
  const put = await request.put(address).set(maker('"1"')).send(changed).expect(200);
  expect(put.body).toMatchObject({ email: null, version: 2 });
  await request.put(address).set(maker('"1"')).send(changed).expect(412);
  const wrong = await request
    .put(address)
    .set(maker('"2"'))
    .send({ ...changed, email: 'nowhere' })
    .expect(422);
  expect(wrong.body.errors[0].field).toBe('email');
  await request.delete(address).set(maker('"2"')).expect(204);
  await request.delete(address).set(maker('"2"')).expect(404);
  await request.get(address).set(as('read-only')).expect(404);
});

it('keeps the address line by line, and names what papers cannot carry', async () => {
  const { request, as } = application;
  const send = (changed: object) =>
    request
      .post('/api/clients')
      .set(as('maker'))
      .send({ ...exampleClientInput, ...changed });
  const { body } = await send({
    phone: ' +1 555 0100 ',
    address: { lines: ['4 Mill Lane', ' Invented Town '], countryCode: 'us' },
    taxNumber: 'INVENTED-1',
  }).expect(201);
  expect(body).toMatchObject({
    phone: '+1 555 0100',
    address: { lines: ['4 Mill Lane', 'Invented Town'], countryCode: 'US' },
    taxNumber: 'INVENTED-1',
  });
  const wrong = await send({ address: { lines: ['a\nb', ''], countryCode: 'UK' } }).expect(422);
  const fields = wrong.body.errors.map(({ field }: { field: string }) => field);
  expect(fields).toEqual(['address.lines.0', 'address.lines.1', 'address.countryCode']);
});
