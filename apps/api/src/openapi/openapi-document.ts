import {
  ALL_CONTRACTS,
  type Contract,
  NO_CONTENT,
  PROBLEM_MEDIA_TYPE,
  problemSchema,
} from '@scantling/contracts';
import { PROBLEM_TABLE, type ProblemCode } from '../problems/problem-table.ts';
import { JsonSchemas } from './json-schemas.ts';
import { parametersOf } from './parameters.ts';

export type OpenApiDocument = Readonly<{
  openapi: '3.1.0';
  info: Readonly<{ title: string; version: string; description: string }>;
  tags: readonly Readonly<{ name: string }>[];
  paths: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  components: Readonly<Record<string, unknown>>;
}>;

function inPascalCase(name: string): string {
  return name.replace(/(?:^|-)(\w)/g, (_, letter: string) => letter.toUpperCase());
}

/** Which problems a route can answer with, besides those every route can. */
export function problemsOf(contract: Contract): ProblemCode[] {
  const codes: ProblemCode[] = ['input-invalid', 'unexpected'];
  if (contract.roles !== 'visitor') codes.push('not-signed-in', 'not-allowed');
  if (contract.path.includes(':')) codes.push('not-found');
  if (contract.needsIfMatch) codes.push('version-needed', 'version-stale');
  if (contract.isIdempotent) codes.push('idempotency-in-flight', 'idempotency-key-reused');
  return codes;
}

function problemResponses(contract: Contract): Record<string, unknown> {
  const byStatus = new Map<number, ProblemCode[]>();
  for (const code of problemsOf(contract)) {
    const { status } = PROBLEM_TABLE[code];
    byStatus.set(status, [...(byStatus.get(status) ?? []), code]);
  }
  return Object.fromEntries(
    [...byStatus].map(([status, codes]) => [
      String(status),
      {
        description: codes.map((code) => `${code}: ${PROBLEM_TABLE[code].title}`).join('; '),
        content: { [PROBLEM_MEDIA_TYPE]: { schema: { $ref: '#/components/schemas/Problem' } } },
      },
    ]),
  );
}

function goodResponse(contract: Contract, schemas: JsonSchemas): Record<string, unknown> {
  const headers = contract.givesEtag
    ? {
        headers: { ETag: { description: 'Version of the record, for If-Match', schema: { type: 'string' } } },
      }
    : {};
  if (contract.status === 204) return { description: 'Done', ...headers };
  const files = contract.givesFile.map((type) => [type, { schema: { type: 'string', format: 'binary' } }]);
  const json = {
    schema: schemas.add(contract.answer, `${inPascalCase(contract.name)}Answer`, 'output'),
    example: contract.example.answer,
  };
  const content = files.length > 0 ? Object.fromEntries(files) : { 'application/json': json };
  return { description: contract.summary, ...headers, content };
}

function requestBody(contract: Contract, schemas: JsonSchemas): Record<string, unknown> {
  if (contract.takesFile) {
    const file = {
      type: 'object',
      properties: { file: { type: 'string', format: 'binary' } },
      required: ['file'],
    };
    return { requestBody: { required: true, content: { 'multipart/form-data': { schema: file } } } };
  }
  if (contract.body === NO_CONTENT) return {};
  const schema = schemas.add(contract.body, `${inPascalCase(contract.name)}Body`, 'input');
  return {
    requestBody: {
      required: true,
      content: { 'application/json': { schema, example: contract.example.body } },
    },
  };
}

/** Who may call a route, in words. */
export function audienceInWords(contract: Contract): string {
  if (contract.roles === 'visitor') return 'everybody, without signing in';
  return contract.roles === 'anyone' ? 'everybody who is signed in' : contract.roles.join(', ');
}

function operationOf(contract: Contract, schemas: JsonSchemas): Record<string, unknown> {
  return {
    operationId: contract.name,
    summary: contract.summary,
    description: `${contract.description}\n\nFor: ${audienceInWords(contract)}.`,
    tags: [contract.tag],
    security: contract.roles === 'visitor' ? [] : [{ apiToken: [] }, { session: [] }],
    parameters: parametersOf(contract, schemas),
    ...requestBody(contract, schemas),
    responses: { [contract.status]: goodResponse(contract, schemas), ...problemResponses(contract) },
  };
}

/** The API's description (OpenAPI 3.1), made from the contracts that the routes themselves check with. */
export function openApiDocument(contracts: readonly Contract[] = ALL_CONTRACTS): OpenApiDocument {
  const schemas = new JsonSchemas();
  const paths: Record<string, Record<string, unknown>> = {};
  for (const contract of contracts) {
    const path = contract.path.replace(/:(\w+)/g, '{$1}');
    const operation = operationOf(contract, schemas);
    paths[path] = { ...paths[path], [contract.method.toLowerCase()]: operation };
  }
  const problem = schemas.add(problemSchema, 'Problem', 'output');
  return {
    openapi: '3.1.0',
    info: {
      title: 'Scantling',
      version: '1',
      description:
        'What a piece of furniture costs and what to charge. Decimals are text; every amount is a figure. Problems are described by RFC 9457.',
    },
    tags: [...new Set(contracts.map(({ tag }) => tag))].map((name) => ({ name })),
    paths,
    components: {
      schemas: { Problem: problem, ...schemas.named() },
      securitySchemes: {
        apiToken: { type: 'http', scheme: 'bearer', description: 'An API token: sct_...' },
        session: { type: 'apiKey', in: 'cookie', name: 'scantling.session_token' },
      },
    },
  };
}
