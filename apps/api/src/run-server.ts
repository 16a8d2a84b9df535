import type { FastifyInstance } from 'fastify';
import type { BackgroundWork } from './background-work.ts';
import type { Config } from './config.ts';
import { type Database, openDatabase } from './database/connect.ts';
import { type EmbeddedPostgres, startEmbeddedPostgres } from './database/embedded-postgres.ts';
import { isPortFree } from './database/free-port.ts';
import { migrate } from './database/migrate.ts';
import { createSetUpLink } from './sign-in/set-up-link.ts';
import type { StartJob } from './start-job.ts';

/** The port that PORT names cannot be listened on. */
export class PortTakenError extends Error {
  override readonly name = 'PortTakenError';
  readonly code = 'port-taken';
  readonly mend = 'Stop what listens there, or choose another port: PORT=4700 npm start';

  constructor(config: Config) {
    super(`Port ${config.port} on ${config.host} is taken by another program.`);
  }
}

/** The start was broken off by a signal. */
export class StartInterrupted extends Error {
  override readonly name = 'StartInterrupted';
}

export type ServerParts = {
  buildApp: (config: Config, dependencies: { database: Database }) => Promise<FastifyInstance>;
  startJobs: readonly StartJob[];
  background: readonly BackgroundWork[];
  /** Prints one line for the person at the terminal. */
  print: (line: string) => void;
  /** Aborted when the start is to be broken off. */
  signal: AbortSignal;
};

export type RunningProduct = { address: string; stop: () => Promise<void> };

/** The address a browser on this machine opens: a wildcard host is no address. */
export function addressOf(host: string, port: number): string {
  const named = host === '0.0.0.0' ? '127.0.0.1' : host === '::' ? '::1' : host;
  return `http://${named.includes(':') ? `[${named}]` : named}:${port}`;
}

function isPortTaken(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
}

/** Ends what was begun, the newest first; one that fails does not keep the others alive. */
async function endAll(endings: (() => Promise<unknown>)[]): Promise<void> {
  const failures: unknown[] = [];
  for (let end = endings.pop(); end !== undefined; end = endings.pop()) {
    await end().catch((error: unknown) => failures.push(error));
  }
  if (failures.length > 0) throw new AggregateError(failures, 'Not everything ended as it should.');
}

/**
 * Starts the whole product: database, tables, jobs at the start, HTTP, background work. Whatever was started is ended again where a
 * later part fails.
 * @throws PortTakenError, DatabaseError, StartInterrupted, or what a start job threw
 */
export async function runServer(config: Config, parts: ServerParts): Promise<RunningProduct> {
  const endings: (() => Promise<unknown>)[] = [];
  const goOn = () => {
    if (parts.signal.aborted) throw new StartInterrupted('The start was broken off.');
  };
  try {
    if (config.port !== 0 && !(await isPortFree(config.host, config.port))) throw new PortTakenError(config);
    const url = config.databaseUrl ?? (await startOwnDatabase(config, parts, endings)).url;
    goOn();
    const applied = await migrate(url);
    if (applied.length > 0) parts.print(`Tables brought up to date: ${applied.join(', ')}`);
    goOn();
    const database = openDatabase(url);
    endings.push(() => database.$disconnect());
    for (const job of parts.startJobs) {
      for (const line of await job.run({ config, database })) parts.print(line);
      goOn();
    }
    const app = await parts.buildApp(config, { database });
    endings.push(() => app.close());
    await app.listen({ host: config.host, port: config.port });
    goOn();
    const listening = app.server.address();
    const port = typeof listening === 'object' && listening !== null ? listening.port : config.port;
    const address = addressOf(config.host, port);
    for (const work of parts.background) endings.push(work.start({ config, database }));
    const link = await createSetUpLink(database);
    if (link !== undefined) {
      parts.print(
        `Nobody can sign in yet. Set up the owner: ${config.publicUrl ?? address}/set-up#${link.token}`,
      );
    }
    return { address, stop: () => endAll(endings) };
  } catch (error) {
    await endAll(endings);
    throw isPortTaken(error) ? new PortTakenError(config) : error;
  }
}

async function startOwnDatabase(
  config: Config,
  parts: ServerParts,
  endings: (() => Promise<unknown>)[],
): Promise<EmbeddedPostgres> {
  const postgres = await startEmbeddedPostgres({ dataDir: config.dataDir, log: parts.print });
  endings.push(postgres.stop);
  return postgres;
}
