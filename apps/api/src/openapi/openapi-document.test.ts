import { ALL_CONTRACTS, defineContract } from '@scantling/contracts';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { startTestApplication, type TestApplication } from '../../../../tests/api/application.ts';
import { PROBLEM_TABLE } from '../problems/problem-table.ts';
import { type OpenApiDocument, openApiDocument } from './openapi-document.ts';

let test: TestApplication;
let document: OpenApiDocument;
// Another reader of JSON Schema than the one that wrote it; formats are checked by the contracts themselves.
const schemas = new Ajv2020({ strict: false, validateFormats: false });

beforeAll(async () => {
  test = await startTestApplication();
  document = (await test.request.get('/api/openapi.json').expect(200)).body;
  schemas.addSchema(document, 'document');
});
afterAll(() => test.close());

function at(value: unknown, ...path: string[]): unknown {
  return path.reduce<unknown>(
    (inner, key) => (typeof inner === 'object' && inner !== null ? Reflect.get(inner, key) : undefined),
    value,
  );
}

function faults(pointer: string[], value: unknown): unknown {
  const escaped = pointer.map((part) => encodeURIComponent(part.replaceAll('~', '~0').replaceAll('/', '~1')));
  const check = schemas.compile({ $ref: `document#/${escaped.join('/')}` });
  return check(value) ? [] : check.errors;
}

function references(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    key === '$ref' && typeof inner === 'string' ? [inner] : references(inner),
  );
}

describe('the API description', () => {
  it('is OpenAPI 3.1 with every route once', () => {
    expect(document.openapi).toMatch(/^3\.1\.\d+$/);
    const described = Object.values(document.paths).flatMap((item) =>
      Object.values(item).map((operation) => at(operation, 'operationId')),
    );
    expect(described.sort()).toEqual(ALL_CONTRACTS.map(({ name }) => name).sort());
  });

  it.each(ALL_CONTRACTS.map((contract) => [contract.name, contract] as const))(
    '%s has examples that its schemas take',
    (_, contract) => {
      const path = contract.path.replace(/:(\w+)/g, '{$1}');
      const place = ['paths', path, contract.method.toLowerCase()];
      const operation = at(document, ...place);
      expect(at(operation, 'summary')).toBeTruthy();
      for (const part of [['requestBody'], ['responses', String(contract.status)]]) {
        const json = [...part, 'content', 'application/json'];
        if (at(operation, ...json) === undefined) continue;
        expect(at(operation, ...json, 'example'), part.join()).toBeDefined();
        expect(faults([...place, ...json, 'schema'], at(operation, ...json, 'example'))).toEqual([]);
      }
    },
  );

  it('has no reference that leads nowhere', () => {
    for (const reference of new Set(references(document))) {
      expect(reference).toMatch(/^#\/components\/schemas\/[\w.-]+$/);
      expect(at(document, ...reference.slice(2).split('/')), reference).toBeDefined();
    }
  });

  it('refuses what the contract refuses', () => {
    const body = ['paths', '/api/api-tokens', 'post', 'requestBody', 'content', 'application/json', 'schema'];
    expect(faults(body, { name: 'x', role: 'king' })).not.toEqual([]);
  });

  it('carries schemas that contain themselves', () => {
    const assembly = z.strictObject({
      name: z.string(),
      get parts() {
        return z.array(assembly);
      },
    });
    const example = { name: 'bench', parts: [{ name: 'leg', parts: [] }] };
    const contract = defineContract({
      name: 'echo-assembly',
      method: 'POST',
      path: '/api/echo',
      summary: 'x',
      description: 'x',
      tag: 'x',
      roles: 'anyone',
      body: assembly,
      answer: z.strictObject({ assembly }),
      example: { body: example, answer: { assembly: example } },
    });
    const made = openApiDocument([contract]);
    const known = Object.keys(at(made, 'components', 'schemas') ?? {});
    for (const reference of references(made)) expect(known).toContain(reference.split('/').at(-1));
    expect(known).toContain('EchoAssemblyBody');
  });
});

describe('the page for people', () => {
  it('shows every route and every problem without a script', async () => {
    const { text } = await test.request.get('/api/docs').expect(200).expect('content-type', /html/);
    for (const { name } of ALL_CONTRACTS) expect(text).toContain(`<article id="${name}">`);
    for (const code of Object.keys(PROBLEM_TABLE)) expect(text).toContain(`id="problem-${code}"`);
    expect(text).not.toMatch(/<script|\son\w+=|style=/);
    await test.request.get('/api/docs.css').expect(200).expect('content-type', /css/);
  });
});
