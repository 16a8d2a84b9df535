import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { problemSchema } from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../tests/api/application.ts';

let test: TestApplication;
const lines: string[] = [];
const webFolder = mkdtempSync(join(tmpdir(), 'scantling-web-'));

beforeAll(async () => {
  writeFileSync(join(webFolder, 'index.html'), '<!doctype html><title>Scantling</title>');
  writeFileSync(join(webFolder, 'mark.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
  const logStream = { write: (line: string) => lines.push(line) };
  test = await startTestApplication({ webFolder, logStream, config: { logLevel: 'info' } });
});
afterAll(async () => {
  await test.close();
  rmSync(webFolder, { recursive: true });
});

const makeToken = () => test.request.post('/api/api-tokens').set(test.as('owner'));

describe('problems (RFC 9457)', () => {
  it.each([
    ['an unknown address', () => test.request.get('/api/nothing'), 404, 'not-found'],
    [
      'an unknown method',
      () => test.request.delete('/api/users').set(test.as('owner')),
      405,
      'method-not-allowed',
    ],
    [
      'JSON that is cut off',
      () => makeToken().set('content-type', 'application/json').send('{"name":'),
      400,
      'request-malformed',
    ],
    [
      'another kind of content',
      () => makeToken().set('content-type', 'text/xml').send('<a/>'),
      415,
      'media-type-unknown',
    ],
    [
      'too much',
      () => makeToken().send({ name: 'x'.repeat(9_000_000), role: 'maker' }),
      413,
      'request-too-large',
    ],
    [
      'an address that cannot be decoded',
      () => test.request.get('/api/users/%E0%A4%A'),
      400,
      'request-malformed',
    ],
    ['no body', () => makeToken(), 422, 'input-invalid'],
    [
      'a foreign cursor',
      () => test.request.get('/api/users?cursor=Zm9v').set(test.as('owner')),
      422,
      'input-invalid',
    ],
  ] as const)('answer %s', async (_, send, status, code) => {
    const answer = await send().expect(status);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    const problem = problemSchema.parse(answer.body);
    expect(problem).toMatchObject({ status, code, instance: answer.headers['x-request-id'] });
  });

  it('names every field that is wrong, and the mend', async () => {
    const answer = await makeToken().send({ name: '', role: 'king', colour: 'red' }).expect(422);
    expect(answer.body.errors).toEqual([
      { field: 'name', message: 'is empty', mend: 'Fill it in.' },
      {
        field: 'role',
        message: 'is not one of the choices',
        mend: 'Give one of "owner", "maker", "bookkeeper", "read-only".',
      },
      { field: 'colour', message: 'is not known here', mend: 'Leave it out, or correct its name.' },
    ]);
    const query = await test.request.get('/api/users?limit=0&page=2').set(test.as('owner')).expect(422);
    expect(query.body.errors.map(({ field }: { field: string }) => field)).toEqual([
      'query.limit',
      'query.page',
    ]);
  });

  it('refuse text that no database can keep', async () => {
    const answer = await makeToken().send({ name: 'a\u0000b', role: 'maker' }).expect(422);
    expect(answer.body.errors[0]).toMatchObject({ field: 'name', mend: 'Remove it.' });
  });

  it('tell which methods an address takes', async () => {
    const answer = await test.request.delete('/api/users').set(test.as('owner'));
    expect(answer.headers.allow).toBe('GET, POST, HEAD');
  });
});

describe('the log', () => {
  it('is structured, carries the request id and no secret', async () => {
    lines.length = 0;
    const { authorization } = test.as('owner');
    await test.request
      .get('/api/users?token=open-sesame')
      .set({ authorization, 'x-request-id': 'from-the-proxy-1', cookie: 'scantling.session_token=crumb' })
      .expect('x-request-id', 'from-the-proxy-1');
    await test.request.get('/api/health').set('x-request-id', 'bad id\tforged').expect(200);
    const logged = lines.map((line): { reqId?: string } => JSON.parse(line));
    expect(logged.some(({ reqId }) => reqId === 'from-the-proxy-1')).toBe(true);
    const whole = lines.join('');
    for (const secret of [authorization, 'open-sesame', 'crumb', 'forged'])
      expect(whole).not.toContain(secret);
  });
});

describe('health', () => {
  it('is told with and without the database', async () => {
    await test.request.get('/api/health').expect(200, { status: 'running' });
    await test.request.get('/api/ready').expect(200, { status: 'ready' });
  });
});

describe('the web', () => {
  it('is one page for every address that is neither a file nor the API', async () => {
    for (const path of ['/', '/designs/12/cost-sheet']) {
      const page = await test.request.get(path).expect(200);
      expect(page.text).toContain('<title>Scantling</title>');
      expect(page.headers['cache-control']).toBe('no-cache');
    }
    await test.request.get('/mark.svg').expect(200).expect('content-type', /svg/);
    await test.request.get('/gone.js').expect(404);
    await test.request.get('/api/gone').expect(404);
    await test.request.get('/..%2f..%2fpackage.json').expect(404);
  });

  it('allows no inline script', async () => {
    const policy = (await test.request.get('/')).headers['content-security-policy'] ?? '';
    expect(policy).toMatch(/script-src 'self'(;|$)/);
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain('unsafe-eval');
  });

  it('is compressed where it is long', async () => {
    await test.request
      .get('/api/openapi.json')
      .set('accept-encoding', 'gzip')
      .expect('content-encoding', 'gzip');
  });
});
