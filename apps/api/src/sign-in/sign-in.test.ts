import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  browserAfter,
  startTestApplication,
  type TestApplication,
} from '../../../../tests/api/application.ts';
import { addUser } from './add-user.ts';

let test: TestApplication;
let now = Date.parse('2026-03-01T09:00:00Z');
const password = 'a long enough sentence';

async function person(application: TestApplication, name: string, role: 'owner' | 'maker' = 'owner') {
  return addUser(application.database, { name, email: `${name}@workshop.example`, password, role });
}
const signIn = (email: string, given = password, application = test) =>
  application.request.post('/api/auth/sign-in/email').send({ email, password: given });

beforeAll(async () => {
  test = await startTestApplication({ clock: () => new Date(now) });
  await person(test, 'ida');
});
afterAll(() => test.close());

describe('signing in', () => {
  it('gives an httpOnly cookie that a page of another site does not send along', async () => {
    const answer = await signIn('IDA@workshop.example').expect(200);
    const cookie = String(answer.headers['set-cookie']);
    expect(cookie).toMatch(/^scantling\.session_token=/);
    expect(cookie).toMatch(/HttpOnly/i);
    expect(cookie).toMatch(/SameSite=Lax/i);
    expect(cookie).not.toMatch(/Secure/i);
  });

  it('marks the cookie Secure under a public https address', async () => {
    const other = await startTestApplication({ config: { publicUrl: 'https://workshop.example' } });
    await person(other, 'ida');
    const answer = await signIn('ida@workshop.example', password, other).expect(200);
    expect(String(answer.headers['set-cookie'])).toMatch(/__Secure-scantling\.session_token=.*Secure/i);
    await other.close();
  });

  it('fails the same way for a wrong password and for nobody', async () => {
    const [wrong, nobody] = [await signIn('ida@workshop.example', 'wrong'), await signIn('eve@x.example')];
    expect([wrong.status, wrong.body.code]).toEqual([401, 'sign-in-failed']);
    expect([nobody.status, nobody.body.detail]).toEqual([401, wrong.body.detail]);
  });

  it('ends with signing out', async () => {
    const answer = await signIn('ida@workshop.example').expect(200);
    const { cookie, origin } = browserAfter(answer);
    await test.request.get('/api/users').set('cookie', cookie).expect(200);
    await test.request.post('/api/auth/sign-out').set({ cookie, origin }).send({}).expect(200);
    await test.request.get('/api/users').set('cookie', cookie).expect(401);
  });

  it('offers nothing else of the library', async () => {
    for (const path of [
      'sign-up/email',
      'update-user',
      'request-password-reset',
      'delete-user',
      'sign-in/social',
    ])
      await test.request.post(`/api/auth/${path}`).send({}).expect(404);
  });
});

describe('guessing', () => {
  it('is slowed down per e-mail address, and only failures count', async () => {
    await person(test, 'per');
    for (let attempt = 0; attempt < 15; attempt += 1) await signIn('per@workshop.example').expect(200);
    for (let attempt = 0; attempt < 10; attempt += 1)
      await signIn('per@workshop.example', 'wrong').expect(401);
    const limited = await signIn('per@workshop.example').expect(429);
    expect(limited.body.code).toBe('too-many-requests');
    expect(Number(limited.headers['retry-after'])).toBeGreaterThan(0);
    await signIn('ida@workshop.example').expect(200);
    now += 15 * 60 * 1000;
    await signIn('per@workshop.example').expect(200);
  });

  it('does not slip through many at once', async () => {
    now += 60 * 60 * 1000;
    await person(test, 'kim');
    const many = Array.from({ length: 14 }, () => signIn('kim@workshop.example', 'wrong'));
    const statuses = (await Promise.all(many)).map(({ status }) => status);
    expect(statuses.filter((status) => status === 401)).toHaveLength(10);
    expect(statuses.filter((status) => status === 429)).toHaveLength(4);
  });

  it('is slowed down per network address', async () => {
    now += 60 * 60 * 1000;
    const statuses: number[] = [];
    for (let attempt = 0; attempt < 31; attempt += 1)
      statuses.push((await signIn(`nobody-${attempt}@x.example`, 'wrong')).status);
    expect(statuses.slice(0, 30)).toEqual(Array(30).fill(401));
    expect(statuses[30]).toBe(429);
    now += 60 * 60 * 1000;
  });
});

describe('a page of another site', () => {
  it('cannot change anything with the cookie', async () => {
    const answer = await signIn('ida@workshop.example').expect(200);
    const { cookie, origin } = browserAfter(answer);
    const change = (headers: Record<string, string>) =>
      test.request
        .post('/api/api-tokens')
        .set({ cookie, ...headers })
        .send({ name: 'x', role: 'maker' });
    await change({ origin }).expect(201);
    await change({ 'sec-fetch-site': 'same-origin' }).expect(201);
    const refused = [
      { origin: 'https://evil.example' },
      { origin: 'null' },
      {},
      { 'sec-fetch-site': 'cross-site' },
    ];
    for (const headers of refused) {
      const { body } = await change(headers).expect(403);
      expect(body.code).toBe('origin-refused');
    }
    const login = { email: 'ida@workshop.example', password };
    await test.request
      .post('/api/auth/sign-in/email')
      .set('origin', 'https://evil.example')
      .send(login)
      .expect(403);
  });

  it('does not hinder programs with a token', async () => {
    const headers = { ...test.as('owner'), origin: 'https://elsewhere.example' };
    await test.request.post('/api/api-tokens').set(headers).send({ name: 'x', role: 'maker' }).expect(201);
  });
});
