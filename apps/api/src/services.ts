import type { CuttingPlanner } from '@scantling/cutting-solver';
import type { PaperRenderer } from '@scantling/renderers';
import type { CalculationThreads } from './calculation-threads/calculation-threads.ts';
import type { Config } from './config.ts';
import type { Database } from './database/connect.ts';
import type { Auth } from './sign-in/auth.ts';
import type { FailedAttempts } from './sign-in/failed-attempts.ts';

/** What handlers work with. Clock and randomness come in, so that tests can hold them still. */
export type Services = Readonly<{
  config: Config;
  database: Database;
  clock: () => Date;
  /** Cryptographically strong bytes. */
  random: (size: number) => Buffer;
  auth: Auth;
  /** Sets papers; its thread starts with the first. */
  papers: PaperRenderer;
  /** Answers questions about tables of figures beside the requests. */
  calculations: CalculationThreads;
  /** Plans cutting; its thread starts with the first plan. */
  cutting: CuttingPlanner;
  /** All requests by clients' links, and those whose link was none of ours, by network address. */
  offerReads: FailedAttempts;
  offerMisses: FailedAttempts;
}>;
