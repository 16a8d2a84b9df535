import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { createApiToken } from './create-api-token.ts';

let test: TestApplication;
let now = new Date('2026-03-01T09:00:00Z');
beforeAll(async () => {
  test = await startTestApplication({ clock: () => now });
});
afterAll(() => test.close());

const make = (name: string, role: string) =>
  test.request.post('/api/api-tokens').set(test.as('owner')).send({ name, role });
const list = (query = '') => test.request.get(`/api/api-tokens${query}`).set(test.as('owner')).expect(200);

describe('API tokens', () => {
  it('are 256 random bits, shown once and kept as a hash', async () => {
    const { body } = await make('Label printer', 'read-only').expect(201);
    expect(body.token).toMatch(/^sct_[\w-]{43}$/);
    expect(Buffer.from(body.token.slice(4), 'base64url')).toHaveLength(32);
    const row = await test.database.apiToken.findUniqueOrThrow({ where: { id: body.apiToken.id } });
    expect(row.hash).toBe(createHash('sha256').update(body.token).digest('hex'));
    expect(JSON.stringify(row)).not.toContain(body.token);
    expect(body.token.startsWith(row.prefix)).toBe(true);
    expect(JSON.stringify((await list()).body)).not.toMatch(/sct_[\w-]{5}|hash/);
  });

  it('carry their own role, also made without the server', async () => {
    const { token, id } = await createApiToken(test.database, { name: 'Command', role: 'bookkeeper' });
    const answer = await test.request.get('/api/session').set('authorization', `Bearer ${token}`).expect(200);
    expect(answer.body.user).toEqual({
      kind: 'token',
      id,
      name: 'Command',
      role: 'bookkeeper',
      isDemo: false,
    });
  });

  it('note their last use, once a minute at the most', async () => {
    const { token, id } = await createApiToken(test.database, { name: 'Clock', role: 'owner' });
    const use = () => test.request.get('/api/users').set('authorization', `Bearer ${token}`).expect(200);
    const lastUse = async () =>
      (await test.database.apiToken.findUniqueOrThrow({ where: { id } })).lastUsedAt;
    expect(await lastUse()).toBeNull();
    const first = now;
    await use();
    expect(await lastUse()).toEqual(first);
    now = new Date(first.getTime() + 59_000);
    await use();
    expect(await lastUse()).toEqual(first);
    now = new Date(first.getTime() + 61_000);
    await use();
    expect(await lastUse()).toEqual(now);
  });

  it('are refused from the moment they are revoked', async () => {
    const { token, id } = await createApiToken(test.database, { name: 'Lost', role: 'owner' });
    const use = () => test.request.get('/api/users').set('authorization', `Bearer ${token}`);
    await use().expect(200);
    const revoke = () => test.request.post(`/api/api-tokens/${id}/revoke`).set(test.as('owner'));
    const first = await revoke().expect(200);
    expect((await revoke().expect(200)).body.revokedAt).toBe(first.body.revokedAt);
    const refused = await use().expect(401);
    expect(refused.body.code).toBe('not-signed-in');
    await test.request.post('/api/api-tokens/nobody/revoke').set(test.as('owner')).expect(404);
  });

  it('are refused in any other form', async () => {
    const { token } = await createApiToken(test.database, { name: 'Form', role: 'owner' });
    for (const authorization of [token, `Basic ${token}`, `Bearer ${token}x`, `Bearer ${token.slice(0, -1)}`])
      await test.request.get('/api/users').set('authorization', authorization).expect(401);
  });

  it('are listed newest first, page by page', async () => {
    const all = (await list('?limit=200')).body.items.map(({ id }: { id: string }) => id);
    expect(all).toEqual([...all].sort().reverse());
    const first = (await list('?limit=3')).body;
    const rest = (await list(`?limit=200&cursor=${first.next}`)).body;
    expect([...first.items, ...rest.items].map(({ id }: { id: string }) => id)).toEqual(all);
  });
});
