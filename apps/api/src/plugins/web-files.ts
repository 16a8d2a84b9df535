import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import { ALL_CONTRACTS } from '@scantling/contracts';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { RequestProblem } from '../problems/request-problem.ts';
import { sendProblem } from '../problems/send-problem.ts';

const ROUTES = ALL_CONTRACTS.map(({ method, path }) => ({
  method,
  pattern: new RegExp(`^${path.replace(/:\w+/g, '[^/]+')}/?$`),
}));

function pathOf(request: FastifyRequest): string {
  return request.url.split('?', 1)[0] ?? '';
}

function methodsAt(path: string): string[] {
  return ROUTES.filter(({ pattern }) => pattern.test(path)).map(({ method }) => method);
}

function problemOfAddress(request: FastifyRequest): RequestProblem {
  const methods = methodsAt(pathOf(request));
  if (methods.length === 0) return new RequestProblem('not-found');
  const allow = methods.includes('GET') ? [...methods, 'HEAD'] : methods;
  return new RequestProblem('method-not-allowed', { headers: { allow: allow.join(', ') } });
}

function wantsPage(request: FastifyRequest): boolean {
  const path = pathOf(request);
  const isPage = path !== '/api' && !path.startsWith('/api/') && !/\.\w+$/.test(path);
  return request.method === 'GET' && isPage;
}

/**
 * Serves the built web; every address that is none of the API's and no file answers with the web's one page, which
 * routes by itself. Files under assets/ have their content's hash in the name and may be kept for good.
 */
export async function serveWebFiles(app: FastifyInstance, folder: string): Promise<void> {
  const hasWeb = existsSync(join(folder, 'index.html'));
  if (hasWeb)
    await app.register(fastifyStatic, {
      root: folder,
      cacheControl: false,
      setHeaders: (reply, path) => {
        const isHashed = path.startsWith(join(folder, 'assets'));
        reply.header('cache-control', isHashed ? 'public, max-age=31536000, immutable' : 'no-cache');
      },
    });
  app.setNotFoundHandler(async (request: FastifyRequest, reply: FastifyReply) => {
    if (hasWeb && wantsPage(request)) return reply.sendFile('index.html');
    return sendProblem(request, reply, problemOfAddress(request));
  });
}
