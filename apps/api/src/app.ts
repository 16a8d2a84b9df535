import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import compress from '@fastify/compress';
import multipart from '@fastify/multipart';
import { createCuttingPlanner } from '@scantling/cutting-solver';
import { createPaperRenderer } from '@scantling/renderers';
import fastify, { type FastifyInstance } from 'fastify';
import { createCalculationThreads } from './calculation-threads/calculation-threads.ts';
import { findCheckoutFolder } from './checkout-folder.ts';
import type { Config } from './config.ts';
import type { Database } from './database/connect.ts';
import { ALL_HANDLERS } from './features/all-handlers.ts';
import type { Handler } from './handle.ts';
import { mount } from './mount.ts';
import { serveApiDescription } from './openapi/serve-api-description.ts';
import { checkOrigins } from './plugins/origin-check.ts';
import { giveRequestIds, requestLog } from './plugins/request-log.ts';
import { setSecurityHeaders } from './plugins/security-headers.ts';
import { serveWebFiles } from './plugins/web-files.ts';
import { sendProblem } from './problems/send-problem.ts';
import type { Services } from './services.ts';
import { VISITOR } from './sign-in/actor.ts';
import { createAuth } from './sign-in/auth.ts';
import { mountAuth } from './sign-in/auth-routes.ts';
import { FailedAttempts } from './sign-in/failed-attempts.ts';
import { readSessionSecret } from './sign-in/session-secret.ts';

const MOST_JSON_BYTES = 8 * 1024 * 1024;
const MOST_FILE_BYTES = 100 * 1024 * 1024;

// In a quarter of an hour from one network address: a client reads a few times, a guesser would try for ever.
const MOST_OFFER_READS = 600;
const MOST_OFFER_MISSES = 30;

export type AppDependencies = {
  database: Database;
  clock?: () => Date;
  random?: (size: number) => Buffer;
  /** Signs session cookies; kept in the data folder where none is given. */
  sessionSecret?: string;
  /** Folder of the built web. */
  webFolder?: string;
  /** Parses every answer with its contract before it is sent: for tests and development. */
  checksAnswers?: boolean;
  /** The routes to mount; all of them where none are given. */
  handlers?: readonly Handler[];
  /** Where log lines go instead of standard output. */
  logStream?: { write: (line: string) => void };
};

async function prepareServices(config: Config, given: AppDependencies): Promise<Services> {
  const secret = given.sessionSecret ?? (await readSessionSecret(config.dataDir));
  const clock = given.clock ?? (() => new Date());
  return {
    config,
    database: given.database,
    clock,
    random: given.random ?? randomBytes,
    auth: createAuth(config, given.database, secret),
    papers: createPaperRenderer(),
    calculations: createCalculationThreads(),
    cutting: createCuttingPlanner(),
    offerReads: new FailedAttempts({ clock, most: MOST_OFFER_READS }),
    offerMisses: new FailedAttempts({ clock, most: MOST_OFFER_MISSES }),
  };
}

/** Builds the whole HTTP application without listening. The caller keeps the database and closes the app. */
export async function buildApp(config: Config, dependencies: AppDependencies): Promise<FastifyInstance> {
  const services = await prepareServices(config, dependencies);
  const app = fastify({
    ...requestLog({ level: config.logLevel, stream: dependencies.logStream }),
    bodyLimit: MOST_JSON_BYTES,
    // A public address means a proxy of the workshop's own in front, on this machine or in its private network.
    trustProxy: config.publicUrl === undefined ? false : ['loopback', 'linklocal', 'uniquelocal'],
    forceCloseConnections: 'idle',
    frameworkErrors: (error, request, reply) => {
      sendProblem(request, reply, error);
    },
  });
  app.addHook('onClose', () => services.papers.close());
  app.addHook('onClose', () => services.calculations.close());
  app.addHook('onClose', () => services.cutting.close());
  app.decorateRequest('actor');
  app.addHook('onRequest', async (request) => {
    request.actor = VISITOR;
  });
  app.setErrorHandler((error, request, reply) => sendProblem(request, reply, error));
  giveRequestIds(app);
  checkOrigins(app, config.publicUrl);
  await setSecurityHeaders(app, config.publicUrl);
  await app.register(compress, { threshold: 1024 });
  await app.register(multipart, {
    limits: { fileSize: MOST_FILE_BYTES, files: 1, fields: 10, fieldSize: 10_000 },
  });
  await mountAuth(app, services);
  for (const handler of dependencies.handlers ?? ALL_HANDLERS)
    mount(app, handler, { services, checksAnswers: dependencies.checksAnswers ?? false });
  serveApiDescription(app);
  await serveWebFiles(app, dependencies.webFolder ?? join(findCheckoutFolder(), 'apps', 'web', 'dist'));
  return app;
}
