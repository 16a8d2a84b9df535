import type { Contract } from '@scantling/contracts';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { type Call, FileAnswer, type Handler, type UploadedFile } from './handle.ts';
import { answerOnce } from './idempotency/answer-once.ts';
import { fieldProblem, RequestProblem } from './problems/request-problem.ts';
import { fieldProblemsOf, type Place } from './problems/schema-issues.ts';
import { unstorableTexts } from './problems/storable-text.ts';
import { sendFile } from './send-file.ts';
import type { Services } from './services.ts';
import { requireAudience } from './sign-in/guard.ts';
import { etagOf, readIfMatch } from './version-match.ts';

type MountOptions = { services: Services; checksAnswers: boolean };

function readPart(schema: z.ZodType, given: unknown, place: Place): unknown {
  const errors = unstorableTexts(given);
  if (errors.length > 0) throw new RequestProblem('input-invalid', { errors });
  const read = schema.safeParse(given);
  if (read.success) return read.data;
  throw new RequestProblem('input-invalid', { errors: fieldProblemsOf(read.error, given, place) });
}

async function readFile(request: FastifyRequest): Promise<UploadedFile> {
  const part = await request.file();
  if (part === undefined || part.fieldname !== 'file')
    throw fieldProblem('file', 'is missing', 'Send the file as the part "file" of multipart/form-data.');
  return { name: part.filename, content: part.file };
}

function toCall(contract: Contract, request: FastifyRequest, services: Services): Call {
  const version = contract.needsIfMatch ? readIfMatch(request.headers['if-match']) : undefined;
  return {
    params: readPart(contract.params, request.params, 'path'),
    query: readPart(contract.query, request.query, 'query'),
    body: contract.takesFile ? undefined : readPart(contract.body, request.body ?? undefined, 'body'),
    actor: request.actor,
    services,
    request,
    file: () => readFile(request),
    expectedVersion: () => {
      if (version === undefined) throw new RangeError(`${contract.name} does not need If-Match`);
      return version;
    },
  };
}

function versionOf(contract: Contract, answer: unknown): number {
  const version: unknown =
    typeof answer === 'object' && answer !== null ? Reflect.get(answer, 'version') : undefined;
  if (typeof version === 'number') return version;
  throw new TypeError(`the answer of ${contract.name} has no version to make an ETag of`);
}

function sendJson(contract: Contract, reply: FastifyReply, status: number, body: string): FastifyReply {
  if (contract.givesEtag) reply.header('etag', etagOf(versionOf(contract, JSON.parse(body))));
  if (status === 204) return reply.code(204).send();
  return reply.code(status).type('application/json; charset=utf-8').serializer(String).send(body);
}

/** Makes a contract's route: who may call it, what goes in, what comes out. */
export function mount(app: FastifyInstance, { contract, answer }: Handler, options: MountOptions): void {
  const { services, checksAnswers } = options;
  const toJson = (given: unknown): string => {
    // Handlers are typed; the check finds what types cannot, an undeclared field above all.
    const checked = checksAnswers ? contract.answer.parse(given) : given;
    return checked === undefined ? '' : JSON.stringify(checked);
  };
  app.route({
    method: contract.method,
    url: contract.path,
    // An ETag names bytes, and those of a compressed answer would be others.
    ...(contract.givesFile.length > 0 ? { compress: false } : {}),
    onRequest: requireAudience(contract, services),
    handler: async (request, reply) => {
      const call = toCall(contract, request, services);
      reply.header('cache-control', 'no-store');
      if (contract.givesFile.length > 0) {
        const given = await answer(call);
        if (given instanceof FileAnswer) return sendFile(contract, request, reply, given);
        return sendJson(contract, reply, contract.status, toJson(given));
      }
      const work = async () => ({ status: contract.status, body: toJson(await answer(call)) });
      if (!contract.isIdempotent) {
        const { status, body } = await work();
        return sendJson(contract, reply, status, body);
      }
      const kept = await answerOnce(contract, request, services, work);
      if (kept.isRepeated) reply.header('idempotency-replayed', 'true');
      return sendJson(contract, reply, kept.status, kept.body);
    },
  });
}
