import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  browserAfter,
  startTestApplication,
  type TestApplication,
} from '../../../../tests/api/application.ts';
import { createApiToken } from '../features/api-tokens/create-api-token.ts';
import { addUser } from './add-user.ts';
import { DEMO_EMAIL, isDemoSignInAllowed } from './demo-rule.ts';

const here = { headers: { host: 'localhost:4600' }, socket: { remoteAddress: '127.0.0.1' } };
const config = { publicUrl: undefined };
const withHeaders = (headers: Record<string, string>) => ({
  ...here,
  headers: { ...here.headers, ...headers },
});

describe('the rule', () => {
  it.each(['localhost', '127.0.0.1:4600', '[::1]:4600', 'LOCALHOST:80'])('allows %s', (host) => {
    expect(isDemoSignInAllowed(withHeaders({ host }), config)).toBe(true);
  });

  it.each([
    'workshop.example',
    'localhost.evil.example',
    '127.0.0.1.evil.example',
    '192.168.1.4:4600',
    '',
    '127.0.0.2',
  ])('refuses the host "%s"', (host) => {
    expect(isDemoSignInAllowed(withHeaders({ host }), config)).toBe(false);
  });

  it.each(['forwarded', 'x-forwarded-for', 'x-forwarded-host', 'x-forwarded-proto', 'x-real-ip', 'via'])(
    'refuses what came with %s',
    (header) => {
      expect(isDemoSignInAllowed(withHeaders({ [header]: '127.0.0.1' }), config)).toBe(false);
    },
  );

  it('refuses other machines and public addresses', () => {
    for (const remoteAddress of ['192.168.1.9', '::ffff:10.0.0.1', undefined])
      expect(isDemoSignInAllowed({ ...here, socket: { remoteAddress } }, config)).toBe(false);
    for (const remoteAddress of ['::1', '::ffff:127.0.0.1'])
      expect(isDemoSignInAllowed({ ...here, socket: { remoteAddress } }, config)).toBe(true);
    expect(isDemoSignInAllowed(here, { publicUrl: 'https://workshop.example' })).toBe(false);
  });
});

describe('the demo user', () => {
  const password = 'the demo has a public password';
  let test: TestApplication;
  let demoId = '';
  beforeAll(async () => {
    test = await startTestApplication();
    const demo = { name: 'Demo', email: DEMO_EMAIL, password, role: 'owner', isDemo: true } as const;
    demoId = (await addUser(test.database, demo)).id;
  });
  afterAll(() => test.close());

  const signIn = (headers: Record<string, string> = {}) =>
    test.request.post('/api/auth/sign-in/email').set(headers).send({ email: DEMO_EMAIL, password });

  it('signs in here and nowhere else', async () => {
    await signIn().expect(200);
    for (const headers of [{ host: 'workshop.example' }, { 'x-forwarded-for': '127.0.0.1' }]) {
      const { body } = await signIn(headers).expect(403);
      expect(body.code).toBe('demo-only-here');
    }
  });

  it('is checked again on each use of the session and of the tokens it made', async () => {
    const { cookie } = browserAfter(await signIn().expect(200));
    await test.request.get('/api/users').set('cookie', cookie).expect(200);
    await test.request.get('/api/users').set({ cookie, 'x-forwarded-for': '10.0.0.1' }).expect(403);
    const session = await test.request.get('/api/session').set({ cookie, via: '1.1 proxy' }).expect(200);
    expect(session.body).toMatchObject({ user: null, canUseDemo: false });

    const wanted = { name: 'By the demo', role: 'owner', createdById: demoId } as const;
    const authorization = `Bearer ${(await createApiToken(test.database, wanted)).token}`;
    await test.request.get('/api/users').set({ authorization }).expect(200);
    await test.request.get('/api/users').set({ authorization, host: 'workshop.example' }).expect(403);
  });

  it('cannot change the password everybody knows', async () => {
    const headers = browserAfter(await signIn().expect(200));
    const change = { currentPassword: password, newPassword: 'another long sentence' };
    await test.request.post('/api/auth/change-password').set(headers).send(change).expect(403);
    await signIn().expect(200);
  });

  it('is refused under a public address from the start', async () => {
    const open = await startTestApplication({ config: { publicUrl: 'https://workshop.example' } });
    await addUser(open.database, { name: 'Demo', email: DEMO_EMAIL, password, role: 'owner', isDemo: true });
    const answer = await open.request.post('/api/auth/sign-in/email').send({ email: DEMO_EMAIL, password });
    expect([answer.status, answer.body.code]).toEqual([403, 'demo-only-here']);
    await open.close();
  });
});
