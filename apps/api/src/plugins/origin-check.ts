import type { FastifyInstance, FastifyRequest } from 'fastify';
import { RequestProblem } from '../problems/request-problem.ts';

const CHANGES_NOTHING = new Set(['GET', 'HEAD', 'OPTIONS']);

function ownOrigins(request: FastifyRequest, publicUrl: string | undefined): string[] {
  const { host } = request.headers;
  const ofHost = host === undefined ? [] : [`http://${host}`, `https://${host}`];
  return publicUrl === undefined ? ofHost : [...ofHost, new URL(publicUrl).origin];
}

function comesFromElsewhere(request: FastifyRequest, publicUrl: string | undefined): boolean {
  const { origin, cookie } = request.headers;
  const site = request.headers['sec-fetch-site'];
  if (origin !== undefined) return !ownOrigins(request, publicUrl).includes(origin);
  if (site !== undefined) return site !== 'same-origin' && site !== 'none';
  // Browsers name the origin of every request that changes something; without it a cookie proves nothing.
  return cookie !== undefined;
}

/**
 * Refuses requests that change something and were made by a page of another site with this site's cookie (CSRF).
 * A browser cannot forge Origin or Sec-Fetch-Site. Requests with an API token need no check: no page has it.
 */
export function checkOrigins(app: FastifyInstance, publicUrl: string | undefined): void {
  app.addHook('onRequest', async (request) => {
    if (CHANGES_NOTHING.has(request.method) || request.headers.authorization !== undefined) return;
    if (comesFromElsewhere(request, publicUrl)) throw new RequestProblem('origin-refused');
  });
}
