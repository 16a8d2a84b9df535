import { isRole, type Role } from '@scantling/contracts';
import { fromNodeHeaders } from 'better-auth/node';
import type { FastifyRequest } from 'fastify';
import { RequestProblem } from '../problems/request-problem.ts';
import type { Services } from '../services.ts';
import { type Actor, VISITOR } from './actor.ts';
import { isDemoSignInAllowed } from './demo-rule.ts';
import { hashOf, isSameHash } from './secret-text.ts';

// A token's last use is for people to read; a write per request would cost more than the request.
const LAST_USE_STEP_MS = 60_000;

function roleOf(text: string): Role {
  return isRole(text) ? text : 'read-only';
}

function refuseDemoElsewhere(isDemo: boolean, request: FastifyRequest, services: Services): void {
  if (isDemo && !isDemoSignInAllowed(request, services.config)) throw new RequestProblem('demo-only-here');
}

async function actorOfToken(token: string, request: FastifyRequest, services: Services): Promise<Actor> {
  const { database, clock } = services;
  const hash = hashOf(token);
  const found = await database.apiToken.findUnique({ where: { hash }, include: { createdBy: true } });
  if (found === null || !isSameHash(found.hash, hash) || found.revokedAt !== null)
    throw new RequestProblem('not-signed-in', {
      detail: 'This API token is not known or was revoked. Ask an owner for another.',
    });
  // A token made by the demo user would otherwise carry the demo's public password past its rule.
  const isDemo = found.createdBy?.isDemo === true;
  refuseDemoElsewhere(isDemo, request, services);
  const now = clock();
  if (found.lastUsedAt === null || now.getTime() - found.lastUsedAt.getTime() > LAST_USE_STEP_MS)
    await database.apiToken.updateMany({ where: { id: found.id }, data: { lastUsedAt: now } });
  return { kind: 'token', id: found.id, name: found.name, role: roleOf(found.role), isDemo };
}

async function actorOfSession(request: FastifyRequest, services: Services): Promise<Actor> {
  const session = await services.auth.api.getSession({ headers: fromNodeHeaders(request.headers) });
  if (session === null) return VISITOR;
  const { user } = session;
  refuseDemoElsewhere(user.isDemo, request, services);
  return { kind: 'user', id: user.id, name: user.name, role: roleOf(user.role), isDemo: user.isDemo };
}

/**
 * Who sends the request: by API token where one is given, else by session cookie.
 * @throws RequestProblem not-signed-in for a token that does not hold, demo-only-here
 */
export async function findActor(request: FastifyRequest, services: Services): Promise<Actor> {
  const { authorization, cookie } = request.headers;
  if (authorization !== undefined) {
    const token = /^Bearer +(sct_[\w-]{43})$/i.exec(authorization)?.[1];
    if (token === undefined)
      throw new RequestProblem('not-signed-in', {
        detail: 'The Authorization header holds no API token. Send "Authorization: Bearer sct_...".',
      });
    return actorOfToken(token, request, services);
  }
  return cookie === undefined ? VISITOR : actorOfSession(request, services);
}
