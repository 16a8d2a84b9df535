import { createHash } from 'node:crypto';
import type { Contract } from '@scantling/contracts';
import type { FastifyRequest } from 'fastify';
import { Prisma } from '../generated/prisma/client.ts';
import { RequestProblem } from '../problems/request-problem.ts';
import type { Services } from '../services.ts';
import { actorKey } from '../sign-in/actor.ts';

const KEPT_MS = 24 * 60 * 60 * 1000;
// A program that died while answering leaves its row open; after this long nobody is answering any more.
const GIVEN_UP_MS = 5 * 60 * 1000;

export type KeptAnswer = { status: number; body: string; isRepeated: boolean };

function readKey(request: FastifyRequest): string | undefined {
  const header = request.headers['idempotency-key'];
  if (header === undefined) return undefined;
  const key = Array.isArray(header) ? header.join() : header;
  if (!/^[\x21-\x7e]{1,200}$/.test(key)) throw new RequestProblem('idempotency-key-invalid');
  return key;
}

function requestHash(request: FastifyRequest): string {
  const whole = JSON.stringify([request.method, request.url, request.headers['if-match'], request.body]);
  return createHash('sha256').update(whole).digest('hex');
}

function isTaken(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && error.code === 'P2002';
}

/** Claims the key; the unique index decides between two at once. @returns the kept answer where there is one */
async function claim(row: {
  services: Services;
  actor: string;
  key: string;
  route: string;
  hash: string;
}): Promise<{ id: string } | KeptAnswer> {
  const { idempotentAnswer } = row.services.database;
  const now = row.services.clock();
  await idempotentAnswer.deleteMany({
    where: {
      OR: [
        { createdAt: { lt: new Date(now.getTime() - KEPT_MS) } },
        { status: null, createdAt: { lt: new Date(now.getTime() - GIVEN_UP_MS) } },
      ],
    },
  });
  const { actor, key, route, hash } = row;
  try {
    const data = { actor, key, route, requestHash: hash, createdAt: now };
    return await idempotentAnswer.create({ data, select: { id: true } });
  } catch (error) {
    if (!isTaken(error)) throw error;
  }
  const first = await idempotentAnswer.findUnique({ where: { actor_key: { actor, key } } });
  if (first === null || (first.requestHash === hash && first.status === null))
    throw new RequestProblem('idempotency-in-flight', { headers: { 'retry-after': '1' } });
  if (first.requestHash !== hash) throw new RequestProblem('idempotency-key-reused');
  return { status: first.status ?? 200, body: first.body ?? '', isRepeated: true };
}

/**
 * Answers a request; with an Idempotency-Key the answer is kept for a day and given again for the same request.
 * A request that failed keeps nothing, so that it can be mended and sent again with the same key.
 * @throws RequestProblem idempotency-key-reused, idempotency-in-flight, and what `work` throws
 */
export async function answerOnce(
  contract: Contract,
  request: FastifyRequest,
  services: Services,
  work: () => Promise<{ status: number; body: string }>,
): Promise<KeptAnswer> {
  const key = readKey(request);
  if (key === undefined) return { ...(await work()), isRepeated: false };
  const claimed = await claim({
    services,
    actor: actorKey(request.actor),
    key,
    route: contract.name,
    hash: requestHash(request),
  });
  if ('status' in claimed) return claimed;
  const { idempotentAnswer } = services.database;
  try {
    const answer = await work();
    await idempotentAnswer.update({ where: { id: claimed.id }, data: answer });
    return { ...answer, isRepeated: false };
  } catch (error) {
    await idempotentAnswer.deleteMany({ where: { id: claimed.id, status: null } });
    throw error;
  }
}
