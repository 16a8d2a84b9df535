import type { Config } from './config.ts';
import type { Database } from './database/connect.ts';
import type { Auth } from './sign-in/auth.ts';

/** What handlers work with. Clock and randomness come in, so that tests can hold them still. */
export type Services = Readonly<{
  config: Config;
  database: Database;
  clock: () => Date;
  /** Cryptographically strong bytes. */
  random: (size: number) => Buffer;
  auth: Auth;
}>;
