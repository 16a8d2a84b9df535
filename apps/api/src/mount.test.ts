import { defineContract, recordParams } from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { startTestApplication, type TestApplication } from '../../../tests/api/application.ts';
import { FileAnswer, handle } from './handle.ts';
import { requireUpdated } from './version-match.ts';

const labourGrade = z.strictObject({ id: z.string(), name: z.string(), version: z.number().int() });
const exampleGrade = { id: 'x', name: 'Joiner', version: 1 };
const described = { summary: 'Of the tests', description: 'Of the tests.', tag: 'tests' };

const renameGrade = defineContract({
  ...described,
  name: 'rename-grade',
  method: 'PUT',
  path: '/api/test-grades/:id',
  roles: ['owner', 'maker'],
  params: recordParams,
  body: z.strictObject({ name: z.string() }),
  answer: labourGrade,
  needsIfMatch: true,
  givesEtag: true,
  example: { params: { id: 'x' }, body: { name: 'Joiner' }, answer: exampleGrade },
});

const addGrade = defineContract({
  ...described,
  name: 'add-grade',
  method: 'POST',
  path: '/api/test-grades',
  roles: ['owner', 'maker'],
  body: z.strictObject({ code: z.string(), name: z.string().max(20) }),
  answer: labourGrade,
  status: 201,
  idempotent: true,
  givesEtag: true,
  example: { body: { code: 'J', name: 'Joiner' }, answer: exampleGrade },
});

const getList = defineContract({
  ...described,
  name: 'get-list',
  method: 'GET',
  path: '/api/test-list',
  roles: 'anyone',
  givesFile: ['text/csv'],
  example: {},
});

const takeFile = defineContract({
  ...described,
  name: 'take-file',
  method: 'POST',
  path: '/api/test-files',
  roles: ['owner'],
  takesFile: true,
  answer: z.strictObject({ name: z.string(), bytes: z.number() }),
  example: { answer: { name: 'a.csv', bytes: 3 } },
});

const leak = defineContract({
  ...described,
  name: 'leak',
  method: 'GET',
  path: '/api/test-leak',
  roles: 'anyone',
  answer: z.strictObject({ name: z.string() }),
  example: { answer: { name: 'x' } },
});

/** Holds an answer back until the test lets it go. */
let gate: Promise<void> = Promise.resolve();
let added = 0;

const grade = { payPerHour: '20', burden: '0.2', productiveShare: '0.8' };
const handlers = [
  handle(renameGrade, async ({ params, body, services, expectedVersion }) => {
    const grades = services.database.labourGrade;
    const { count } = await grades.updateMany({
      where: { id: params.id, version: expectedVersion() },
      data: { name: body.name, version: { increment: 1 } },
    });
    const exists = async () => (await grades.count({ where: { id: params.id } })) > 0;
    await requireUpdated(count, 'labour grade', exists);
    const { id, name, version } = await grades.findUniqueOrThrow({ where: { id: params.id } });
    return { id, name, version };
  }),
  handle(addGrade, async ({ body, services }) => {
    await gate;
    added += 1;
    const { id, name, version } = await services.database.labourGrade.create({ data: { ...grade, ...body } });
    return { id, name, version };
  }),
  handle(getList, async () => new FileAnswer('Stückliste Eiche.csv', 'text/csv', Buffer.from('part;1\n'))),
  handle(takeFile, async ({ file }) => {
    const { name, content } = await file();
    let bytes = 0;
    for await (const chunk of content) bytes += Buffer.byteLength(chunk);
    return { name, bytes };
  }),
  handle(leak, async () => {
    const row = { name: 'x', secret: 'not declared' };
    return row;
  }),
];

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication({ handlers });
});
afterAll(() => test.close());

const add = (code: string, key?: string, name = 'Joiner') => {
  const request = test.request.post('/api/test-grades').set(test.as('maker')).send({ code, name });
  return key === undefined ? request : request.set('idempotency-key', key);
};

describe('If-Match', () => {
  it('must name the version that is changed', async () => {
    const made = await add('MATCH').expect(201).expect('etag', '"1"');
    const change = () => test.request.put(`/api/test-grades/${made.body.id}`).set(test.as('owner'));
    const missing = await change().send({ name: 'Turner' }).expect(428);
    expect(missing.body.code).toBe('version-needed');
    await change().set('if-match', '"1"').send({ name: 'Turner' }).expect(200).expect('etag', '"2"');
    const stale = await change().set('if-match', '"1"').send({ name: 'Carver' }).expect(412);
    expect(stale.body.code).toBe('version-stale');
    await change().set('if-match', 'W/"2"').send({ name: 'Carver' }).expect(412);
    const now = await test.database.labourGrade.findUniqueOrThrow({ where: { id: made.body.id } });
    expect([now.name, now.version]).toEqual(['Turner', 2]);
    await test.request
      .put('/api/test-grades/nobody')
      .set(test.as('owner'))
      .set('if-match', '"1"')
      .send({ name: 'x' })
      .expect(404);
  });
});

describe('Idempotency-Key', () => {
  it('gives the first answer again, and does the work once', async () => {
    const before = added;
    const first = await add('ONCE', 'key-once').expect(201);
    const again = await add('ONCE', 'key-once').expect(201).expect('idempotency-replayed', 'true');
    expect(again.body).toEqual(first.body);
    expect(again.headers.etag).toBe(first.headers.etag);
    expect(added - before).toBe(1);
  });

  it('refuses the key for another request, but not another caller with the same key', async () => {
    await add('KEY-A', 'key-two').expect(201);
    const reused = await add('KEY-B', 'key-two').expect(422);
    expect(reused.body.code).toBe('idempotency-key-reused');
    const owner = test.as('owner');
    const other = test.request.post('/api/test-grades').set(owner).set('idempotency-key', 'key-two');
    await other.send({ code: 'KEY-C', name: 'Joiner' }).expect(201);
  });

  it('says so while the first request is being answered', async () => {
    let open: () => void = () => undefined;
    gate = new Promise((resolve) => {
      open = resolve;
    });
    const first = add('SLOW', 'key-slow').then((response) => response);
    await expect.poll(() => test.database.idempotentAnswer.count({ where: { key: 'key-slow' } })).toBe(1);
    const second = await add('SLOW', 'key-slow').expect(409);
    expect(second.body.code).toBe('idempotency-in-flight');
    expect(second.headers['retry-after']).toBe('1');
    open();
    expect((await first).status).toBe(201);
    gate = Promise.resolve();
  });

  it('keeps nothing of a request that failed', async () => {
    await add('FAIL', 'key-fail', 'a name of more than twenty letters').expect(422);
    await add('FAIL', 'key-fail').expect(201);
    const twice = await add('FAIL', 'key-fail-2').expect(409);
    expect(twice.body.code).toBe('already-exists');
    expect(await test.database.idempotentAnswer.count({ where: { key: 'key-fail-2' } })).toBe(0);
  });

  it('must be printable', async () => {
    const bad = await add('LONG', 'k'.repeat(201)).expect(400);
    expect(bad.body.code).toBe('idempotency-key-invalid');
  });
});

describe('files', () => {
  it('are answered under their name', async () => {
    const file = await test.request.get('/api/test-list').set(test.as('read-only')).expect(200);
    expect(file.headers['content-type']).toContain('text/csv');
    // RFC 8187, 3.2.3: the extended value is percent-encoded UTF-8.
    expect(file.headers['content-disposition']).toContain("filename*=UTF-8''St%C3%BCckliste%20Eiche.csv");
    expect(file.text).toBe('part;1\n');
  });

  it('are taken as one part', async () => {
    const send = () => test.request.post('/api/test-files').set(test.as('owner'));
    const taken = await send().attach('file', Buffer.from('a;b\n'), 'prices.csv').expect(200);
    expect(taken.body).toEqual({ name: 'prices.csv', bytes: 4 });
    const missing = await send().attach('other', Buffer.from('x'), 'x.csv').expect(422);
    expect(missing.body.errors[0].field).toBe('file');
    await send().send({ file: 'text' }).expect(415);
  });
});

describe('an answer with an undeclared field', () => {
  it('does not leave the house while answers are checked', async () => {
    const answer = await test.request.get('/api/test-leak').set(test.as('owner')).expect(500);
    expect(JSON.stringify(answer.body)).not.toContain('not declared');
  });
});
