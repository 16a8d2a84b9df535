import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  browserAfter,
  startTestApplication,
  type TestApplication,
} from '../../../../../tests/api/application.ts';

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication();
});
afterAll(() => test.close());

const password = 'a long enough sentence';
const enter = (name: string, role: string) =>
  test.request
    .post('/api/users')
    .set(test.as('owner'))
    .send({ name, email: `${name}@Workshop.example`, role, password });
const change = (id: string, role: string) =>
  test.request.put(`/api/users/${id}/role`).set(test.as('owner')).send({ role });
const remove = (id: string) => test.request.delete(`/api/users/${id}`).set(test.as('owner'));
const signIn = (email: string) => test.request.post('/api/auth/sign-in/email').send({ email, password });

describe('people', () => {
  it('are entered once, by e-mail address whatever its letters', async () => {
    const made = await enter('Ida', 'maker').expect(201);
    expect(made.body).toMatchObject({
      name: 'Ida',
      email: 'ida@workshop.example',
      role: 'maker',
      isDemo: false,
    });
    const twice = await enter('IDA', 'maker').expect(409);
    expect(twice.body.errors[0].field).toBe('email');
    const short = await test.request
      .post('/api/users')
      .set(test.as('owner'))
      .send({ name: 'Per', email: 'no address', role: 'maker', password: 'short' })
      .expect(422);
    expect(short.body.errors.map(({ field }: { field: string }) => field)).toEqual(['email', 'password']);
  });

  it('cannot sign themselves up', async () => {
    const given = { name: 'Eve', email: 'eve@elsewhere.example', password };
    await test.request.post('/api/auth/sign-up/email').send(given).expect(404);
    expect(await test.database.user.count({ where: { name: 'Eve' } })).toBe(0);
  });

  it('are listed page by page, stable while rows come', async () => {
    for (const name of ['Abe', 'Bea', 'Cai']) await enter(name, 'read-only').expect(201);
    const page = (query: string) => test.request.get(`/api/users?${query}`).set(test.as('owner')).expect(200);
    const first = (await page('limit=2')).body;
    expect(first.items.map(({ name }: { name: string }) => name)).toEqual(['Abe', 'Bea']);
    await enter('Aaron', 'read-only').expect(201);
    const second = (await page(`limit=2&cursor=${first.next}`)).body;
    expect(second.items.map(({ name }: { name: string }) => name)).toEqual(['Cai', 'Ida']);
    expect(second.next).toBeNull();
    expect(JSON.stringify(first)).not.toContain('password');
  });

  it('keep one owner at all times, also when two are removed at once', async () => {
    const [ann, bob] = [(await enter('Ann', 'owner')).body, (await enter('Bob', 'owner')).body];
    const both = await Promise.all([remove(ann.id), remove(bob.id)]);
    expect(both.map(({ status }) => status).sort()).toEqual([204, 409]);
    const [left] = await test.database.user.findMany({ where: { role: 'owner' } });
    if (left === undefined) throw new Error('no owner is left');
    const kept = await change(left.id, 'maker').expect(409);
    expect(kept.body.code).toBe('last-owner');
    await change(left.id, 'owner').expect(200);
    await remove('nobody').expect(404);
    await change('nobody', 'owner').expect(404);
  });

  it('lose their sessions and tokens when they go, and tokens beyond a lesser role', async () => {
    const { body: cleo } = await enter('Cleo', 'owner');
    const session = await signIn('cleo@workshop.example').expect(200);
    const asCleo = browserAfter(session);
    const make = async (role: string) => {
      const made = await test.request
        .post('/api/api-tokens')
        .set(asCleo)
        .send({ name: role, role })
        .expect(201);
      return { authorization: `Bearer ${made.body.token}` };
    };
    const [owning, reading] = [await make('owner'), await make('read-only')];
    await change(cleo.id, 'maker').expect(200);
    await test.request.get('/api/users').set(owning).expect(401);
    await test.request.get('/api/users').set(reading).expect(403);
    await test.request.get('/api/users').set('cookie', asCleo.cookie).expect(403);
    await remove(cleo.id).expect(204);
    await test.request.get('/api/users').set(reading).expect(401);
    await test.request.get('/api/users').set('cookie', asCleo.cookie).expect(401);
  });
});
