import type { Config } from './config.ts';
import type { Database } from './database/connect.ts';

/** What a job at the start is given; it may throw, which ends the start with its message. */
export type StartContext = { config: Config; database: Database };

/**
 * Work done at every start, after the tables are up to date and before the product says that it is ready.
 * `run` returns the lines to print; a job with nothing to do returns none, so that a second start changes nothing.
 */
export type StartJob = { name: string; run: (context: StartContext) => Promise<readonly string[]> };
