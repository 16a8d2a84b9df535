import { afterEach, describe, expect, it, vi } from 'vitest';
import { z } from 'zod';
import { addressOf, callApi, newIdempotencyKey } from './api-client.ts';
import { ApiProblem } from './api-problem.ts';
import { fieldErrors } from './field-errors.ts';

const answers = (status: number, body: string, headers: Record<string, string> = {}) =>
  vi.fn<typeof fetch>(async () => new Response(body === '' ? null : body, { status, headers }));

afterEach(() => vi.unstubAllGlobals());

const supplier = z.object({ name: z.string() });
const route = {
  method: 'patch',
  path: '/api/suppliers/:supplierId',
  params: z.object({ supplierId: z.string() }),
  body: supplier,
  answer: supplier,
};

async function problemOf(call: Promise<unknown>): Promise<ApiProblem> {
  const caught = await call.then(
    () => undefined,
    (error: unknown) => error,
  );
  if (!(caught instanceof ApiProblem)) throw new Error(`no ApiProblem but ${String(caught)}`);
  return caught;
}

describe('the address', () => {
  it('takes parameters, encoded, and leaves empty query values out', () => {
    expect(addressOf(route, { params: { supplierId: 'a/b' } })).toBe('/api/suppliers/a%2Fb');
    expect(
      addressOf(
        { path: '/api/designs/:id/parts' },
        { params: { id: 7 }, query: { q: 'oak & ash', cursor: undefined, form: ['sheet', 'each'] } },
      ),
    ).toBe('/api/designs/7/parts?q=oak+%26+ash&form=sheet&form=each');
  });

  it('refuses a missing parameter', () => {
    expect(() => addressOf(route, {})).toThrow('needs "supplierId"');
  });
});

describe('a call', () => {
  it('sends the precondition and the key, and keeps the ETag', async () => {
    const fetched = answers(200, '{"name":"Alder & Wray"}', { etag: '"3"' });
    vi.stubGlobal('fetch', fetched);
    const answer = await callApi(route, {
      params: { supplierId: '1' },
      body: { name: 'Alder & Wray' },
      ifMatch: '"2"',
      idempotencyKey: 'k',
    });
    expect(answer).toEqual({ value: { name: 'Alder & Wray' }, etag: '"3"' });
    const options = fetched.mock.calls[0]?.[1];
    const headers = new Headers(options?.headers);
    expect(options?.method).toBe('PATCH');
    expect(headers.get('if-match')).toBe('"2"');
    expect(headers.get('idempotency-key')).toBe('k');
    expect(headers.get('content-type')).toBe('application/json');
  });

  it('takes an answer without a body', async () => {
    vi.stubGlobal('fetch', answers(204, ''));
    const gone = { method: 'delete', path: '/api/suppliers/1', answer: z.undefined() };
    expect((await callApi(gone)).value).toBeUndefined();
  });

  it('makes a new key each time', () => {
    expect(newIdempotencyKey()).toMatch(/^[0-9a-f]{32}$/);
    expect(newIdempotencyKey()).not.toBe(newIdempotencyKey());
  });
});

describe('a failed call', () => {
  // Members after RFC 9457, 3.1; `errors` is an extension member of ours as in its section 3 example.
  it('carries the problem details and the errors by field', async () => {
    const body = JSON.stringify({
      type: 'https://example.invalid/problems/invalid',
      title: 'The supplier is not complete',
      status: 422,
      detail: 'One field must be mended.',
      instance: '/api/suppliers/1',
      errors: [
        { field: 'name', message: 'The name is empty', mend: 'Give the supplier a name.' },
        { field: 'terms', message: 'Unknown terms' },
      ],
    });
    vi.stubGlobal('fetch', answers(422, body, { 'content-type': 'application/problem+json' }));
    const problem = await problemOf(callApi(route, { params: { supplierId: '1' } }));
    expect(problem).toMatchObject({ status: 422, title: 'The supplier is not complete' });
    expect(problem.message).toBe('One field must be mended.');
    const { errorFor, unplaced } = fieldErrors(problem, ['name']);
    expect(errorFor('name')?.mend).toBe('Give the supplier a name.');
    expect(errorFor('code')).toBeUndefined();
    expect(unplaced.map((one) => one.field)).toEqual(['terms']);
  });

  it('is understood in the short form of the sign-in library', async () => {
    vi.stubGlobal(
      'fetch',
      answers(401, '{"code":"INVALID_EMAIL_OR_PASSWORD","message":"Invalid email or password"}'),
    );
    const problem = await problemOf(callApi(route, { params: { supplierId: '1' } }));
    expect(problem).toMatchObject({ status: 401, title: 'Invalid email or password', errors: [] });
  });

  it('is worded when the body says nothing usable', async () => {
    for (const body of ['', '<html>Bad gateway</html>', '{"errors":"many"}', 'null']) {
      vi.stubGlobal('fetch', answers(502, body));
      const problem = await problemOf(callApi(route, { params: { supplierId: '1' } }));
      expect(problem.title).toBe('The server failed (502)');
    }
  });

  it('says when the server is not reached, and lets an abort pass', async () => {
    vi.stubGlobal(
      'fetch',
      vi.fn(async () => Promise.reject(new TypeError('fetch failed'))),
    );
    expect((await problemOf(callApi(route, { params: { supplierId: '1' } }))).status).toBe(0);
    const abort = new DOMException('stopped', 'AbortError');
    vi.stubGlobal(
      'fetch',
      vi.fn(async () => Promise.reject(abort)),
    );
    await expect(callApi(route, { params: { supplierId: '1' } })).rejects.toBe(abort);
  });

  it('says when the answer has another shape', async () => {
    vi.stubGlobal('fetch', answers(200, '{"title":1}'));
    const problem = await problemOf(callApi(route, { params: { supplierId: '1' } }));
    expect(problem.code).toBe('unexpected-answer');
    expect(problem.message).toContain('PATCH /api/suppliers/:supplierId');
  });
});
