import { ROLES, type Role } from '@scantling/contracts';
import type { FastifyInstance } from 'fastify';
import supertest, { type Response } from 'supertest';
import { type AppDependencies, buildApp } from '../../apps/api/src/app.ts';
import { type Config, readConfig } from '../../apps/api/src/config.ts';
import type { Database } from '../../apps/api/src/database/connect.ts';
import { createApiToken } from '../../apps/api/src/features/api-tokens/create-api-token.ts';
import { createTestDatabase } from './test-database.ts';

export type TestApplication = {
  app: FastifyInstance;
  /** Sends requests to the application, which listens on a port of its own. */
  request: ReturnType<typeof supertest>;
  /** Headers of a program whose token has this role. */
  as: (role: Role) => { authorization: string };
  database: Database;
  close: () => Promise<void>;
};

type Options = { config?: Partial<Config> } & Omit<Partial<AppDependencies>, 'database'>;

/** The real application on a database of its own, with a token for each role. Call `close` in afterAll. */
export async function startTestApplication(options: Options = {}): Promise<TestApplication> {
  const { config: changed, ...dependencies } = options;
  const { database, drop } = await createTestDatabase();
  const config: Config = { ...readConfig({ LOG_LEVEL: 'error' }), port: 0, ...changed };
  const app = await buildApp(config, {
    database,
    sessionSecret: 'a secret of the tests, long enough to sign cookies with',
    checksAnswers: true,
    ...dependencies,
  });
  const made = ROLES.map(async (role) => {
    const { token } = await createApiToken(database, { name: `test ${role}`, role });
    return [role, token] as const;
  });
  const tokens = new Map(await Promise.all(made));
  await app.listen({ host: '127.0.0.1', port: 0 });
  return {
    app,
    request: supertest(app.server),
    as: (role) => ({ authorization: `Bearer ${tokens.get(role) ?? ''}` }),
    database,
    close: async () => {
      await app.close();
      await drop();
    },
  };
}

/** What a browser sends after this sign-in: its cookie, and the origin of the page. */
export function browserAfter(signIn: Response): { cookie: string; origin: string } {
  const given: unknown = signIn.headers['set-cookie'];
  const cookies = Array.isArray(given) ? given.map(String) : [];
  return {
    cookie: cookies.map((cookie) => cookie.split(';', 1)[0]).join('; '),
    origin: new URL(signIn.request.url).origin,
  };
}
