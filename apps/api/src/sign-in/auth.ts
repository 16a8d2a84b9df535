import { betterAuth } from 'better-auth';
import { prismaAdapter } from 'better-auth/adapters/prisma';
import type { Config } from '../config.ts';
import type { Database } from '../database/connect.ts';

export const AUTH_PATH = '/api/auth';

const WEEK_SECONDS = 7 * 24 * 60 * 60;

/**
 * Sign-in with e-mail address and password. Nobody signs up: people are entered by an owner or by the set-up.
 * Sessions live in the database; the cookie is httpOnly and SameSite=Lax, and Secure under a public https address.
 */
export function createAuth(config: Config, database: Database, secret: string) {
  const isHttps = config.publicUrl?.startsWith('https:') === true;
  return betterAuth({
    appName: 'Scantling',
    baseURL: config.publicUrl ?? `http://127.0.0.1:${config.port}`,
    basePath: AUTH_PATH,
    secret,
    database: prismaAdapter(database, { provider: 'postgresql' }),
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 12, maxPasswordLength: 128 },
    session: { expiresIn: WEEK_SECONDS, updateAge: WEEK_SECONDS / 7 },
    user: {
      additionalFields: {
        role: { type: 'string', required: true, input: false },
        isDemo: { type: 'boolean', required: true, input: false },
      },
    },
    advanced: {
      cookiePrefix: 'scantling',
      useSecureCookies: isHttps,
      defaultCookieAttributes: { httpOnly: true, sameSite: 'lax', secure: isHttps },
      // The server checks the origin of every request itself (plugins/origin-check.ts), this one's included.
      disableCSRFCheck: true,
    },
    // Failed attempts are counted by sign-in/failed-attempts.ts, which also looks at the address signed in to.
    rateLimit: { enabled: false },
    telemetry: { enabled: false },
    logger: { disabled: true },
  });
}

export type Auth = ReturnType<typeof createAuth>;
