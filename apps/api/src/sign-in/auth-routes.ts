import rateLimit from '@fastify/rate-limit';
import { fromNodeHeaders } from 'better-auth/node';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import type { ProblemCode } from '../problems/problem-table.ts';
import { RequestProblem } from '../problems/request-problem.ts';
import type { Services } from '../services.ts';
import { AUTH_PATH } from './auth.ts';
import { isDemoSignInAllowed } from './demo-rule.ts';
import { FailedAttempts } from './failed-attempts.ts';

/** What of the library is open to the world; everything else under its path does not exist. */
const OPEN_PATHS = [
  { method: 'POST', path: '/sign-in/email' },
  { method: 'POST', path: '/sign-out' },
  { method: 'GET', path: '/get-session' },
  { method: 'POST', path: '/change-password' },
] as const;

const credentials = z.object({ email: z.string().trim().toLowerCase() });

const MOST_FAILURES_PER_EMAIL = 10;
const MOST_FAILURES_PER_ADDRESS = 30;

function toWebRequest(request: FastifyRequest): Request {
  const headers = fromNodeHeaders(request.headers);
  const url = new URL(request.url, `${request.protocol}://${request.headers.host ?? 'localhost'}`);
  if (request.method !== 'POST') return new Request(url, { method: request.method, headers });
  headers.set('content-type', 'application/json');
  headers.delete('content-length');
  return new Request(url, { method: 'POST', headers, body: JSON.stringify(request.body ?? {}) });
}

function problemCodeOf(status: number): ProblemCode {
  if (status === 401) return 'sign-in-failed';
  if (status === 429) return 'too-many-requests';
  return status >= 500 ? 'unexpected' : 'sign-in-refused';
}

async function pass(request: FastifyRequest, reply: FastifyReply, services: Services): Promise<number> {
  const response = await services.auth.handler(toWebRequest(request));
  if (!response.ok) throw new RequestProblem(problemCodeOf(response.status));
  for (const cookie of response.headers.getSetCookie()) reply.header('set-cookie', cookie);
  reply.header('cache-control', 'no-store');
  const body = await response.text();
  await reply.code(response.status).type('application/json; charset=utf-8').serializer(String).send(body);
  return response.status;
}

async function refuseDemoElsewhere(email: string, request: FastifyRequest, services: Services) {
  if (isDemoSignInAllowed(request, services.config)) return;
  const found = await services.database.user.findUnique({ where: { email }, select: { isDemo: true } });
  if (found?.isDemo === true) throw new RequestProblem('demo-only-here');
}

function signInHandler(services: Services) {
  const { clock } = services;
  const byEmail = new FailedAttempts({ clock, most: MOST_FAILURES_PER_EMAIL });
  const byAddress = new FailedAttempts({ clock, most: MOST_FAILURES_PER_ADDRESS });
  return async (request: FastifyRequest, reply: FastifyReply) => {
    const read = credentials.safeParse(request.body);
    if (!read.success) throw new RequestProblem('sign-in-refused');
    const { email } = read.data;
    const wait = Math.max(byAddress.begin(request.ip), byEmail.begin(email));
    if (wait > 0) throw new RequestProblem('too-many-requests', { headers: { 'retry-after': String(wait) } });
    await refuseDemoElsewhere(email, request, services);
    await pass(request, reply, services);
    byEmail.succeeded(email);
    byAddress.succeeded(request.ip);
    return reply;
  };
}

/** Mounts the sign-in library; its errors become our problems, and guessing is slowed down. */
export async function mountAuth(app: FastifyInstance, services: Services): Promise<void> {
  await app.register(async (scope) => {
    await scope.register(rateLimit, {
      max: 300,
      timeWindow: '1 minute',
      errorResponseBuilder: (_, { ttl }) =>
        new RequestProblem('too-many-requests', {
          headers: { 'retry-after': String(Math.ceil(ttl / 1000)) },
        }),
    });
    const signIn = signInHandler(services);
    for (const { method, path } of OPEN_PATHS) {
      scope.route({
        method,
        url: `${AUTH_PATH}${path}`,
        handler: async (request, reply) => {
          if (path === '/sign-in/email') return signIn(request, reply);
          if (path === '/change-password') await requireRealSession(request, services);
          await pass(request, reply, services);
          return reply;
        },
      });
    }
  });
}

// The demo's password is stated in public; whoever changed it would lock the others out.
async function requireRealSession(request: FastifyRequest, services: Services): Promise<void> {
  const session = await services.auth.api.getSession({ headers: fromNodeHeaders(request.headers) });
  if (session === null) throw new RequestProblem('not-signed-in');
  if (session.user.isDemo) throw new RequestProblem('not-allowed');
}
