import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type pg from 'pg';
import { connectOnce } from './connect.ts';
import { clusterUrl, readPassword, readRecord, substituteFolder, writeRecord } from './data-folder.ts';
import { DatabaseError } from './database-error.ts';
import { findFreePort } from './free-port.ts';
import { canEnter, findPostgresAccount, makeDataFolder, type PostgresAccount } from './postgres-account.ts';
import {
  checkClusterVersion,
  createCluster,
  findRunningServer,
  startServer,
  stopServer,
  tellServerToStop,
} from './postgres-cluster.ts';
import { findPostgresPrograms } from './postgres-programs.ts';

/** Held on a connection of its own while an instance lives; the server lets go of it when that process dies. */
const instanceLock = 7_261_000;

/** Where root keeps the database when PostgreSQL's account cannot reach the data folder. */
const fallbackRoot = '/var/lib/scantling';

const databaseName = 'scantling';

export type EmbeddedPostgresOptions = {
  /** Absolute folder; made where missing. */
  dataDir: string;
  /** Told in a sentence what happens that a person should know. */
  log: (message: string) => void;
  /** Root's substitute where PostgreSQL's account cannot reach `dataDir`. */
  fallbackRoot?: string;
  /** False leaves out waiting for the disk: for tests only. */
  isDurable?: boolean;
};

export type EmbeddedPostgres = {
  /** The product's database, with its password. */
  url: string;
  /** The folder that holds the cluster. */
  folder: string;
  stop: () => Promise<void>;
};

/** What the product itself puts into a data folder. */
function isOurs(name: string): boolean {
  return /^(postgres|programs|session-secret|database[.-]|password\.new)/.test(name);
}

/** The folder for the cluster: the data folder, or the stated substitute. */
function chooseFolder(options: EmbeddedPostgresOptions, account: PostgresAccount): string {
  makeDataFolder(options.dataDir, account, isOurs);
  if (canEnter(options.dataDir, account)) return options.dataDir;
  return makeSubstitute(options, account);
}

function makeSubstitute(options: EmbeddedPostgresOptions, account: PostgresAccount): string {
  const folder = substituteFolder(options.dataDir, options.fallbackRoot ?? fallbackRoot);
  makeDataFolder(folder, account, isOurs);
  return folder;
}

/** Takes the folder for this process, or refuses: the lock falls by itself when its holder dies. */
async function takeOver(url: string, options: EmbeddedPostgresOptions): Promise<pg.Client> {
  const client = await connectOnce(url);
  try {
    const asked = await client.query<{ held: boolean }>('select pg_try_advisory_lock($1) as held', [
      instanceLock,
    ]);
    if (asked.rows[0]?.held !== true) {
      throw new DatabaseError(
        'data-folder-in-use',
        `Another running Scantling uses the data folder ${options.dataDir}.`,
        'Stop the other one (Ctrl-C), or set SCANTLING_DATA_DIR (and PORT) to others for this one.',
      );
    }
    const found = await client.query('select 1 from pg_database where datname = $1', [databaseName]);
    if (found.rowCount === 0) await client.query(`create database ${databaseName}`);
    return client;
  } catch (error) {
    await client.end();
    throw error;
  }
}

/**
 * Starts the PostgreSQL that npm installed on the data folder, and makes the cluster and the database on first use.
 * A server left over from a killed process is taken over. The address is recorded in `dataDir`, readable by its
 * owner only; the server listens on 127.0.0.1 alone.
 * @throws DatabaseError data folder in use, unreachable or of another major version; server missing or failing
 */
export async function startEmbeddedPostgres(options: EmbeddedPostgresOptions): Promise<EmbeddedPostgres> {
  const account = findPostgresAccount();
  const folder = chooseFolder(options, account);
  if (folder !== options.dataDir) {
    options.log(
      `PostgreSQL's account cannot reach ${options.dataDir}: the database is kept in ${folder} instead.`,
    );
  }
  const programs = await findPostgresPrograms(account, () => makeSubstitute(options, account));
  const cluster = join(folder, 'postgres');
  const password = readPassword(options.dataDir, existsSync(cluster));
  if (!existsSync(cluster)) {
    options.log(`Making a new database in ${cluster}.`);
    await createCluster(programs, cluster, password);
  }
  checkClusterVersion(programs, cluster);

  const deadline = Date.now() + 30_000;
  for (;;) {
    const running = findRunningServer(cluster);
    try {
      const port = running?.port ?? (await findFreePort(readRecord(options.dataDir)?.port));
      if (running === undefined) {
        await startServer(programs, cluster, { port, isDurable: options.isDurable ?? true });
      }
      const url = clusterUrl(port, password, databaseName);
      const lock = await takeOver(clusterUrl(port, password, 'postgres'), options).catch(
        async (error: unknown) => {
          if (running === undefined) await stopServer(programs, cluster);
          throw error;
        },
      );
      writeRecord(options.dataDir, { url, port, folder });
      return { url, folder, stop: stopper(programs, cluster, lock) };
    } catch (error) {
      // A server that another process starts or stops at this moment: look again.
      const isMoving = error instanceof DatabaseError && error.code === 'database-unreachable';
      const isRace = findRunningServer(cluster)?.pid !== running?.pid;
      if (!(isMoving || isRace) || Date.now() > deadline) throw forDataFolder(error, options.dataDir);
      await pause(200);
    }
  }
}

function forDataFolder(error: unknown, dataDir: string): unknown {
  if (!(error instanceof DatabaseError) || error.code !== 'database-sign-in-refused') return error;
  return new DatabaseError(
    'data-folder-password',
    `The password kept in ${dataDir} is not the one of the database there.`,
    'Restore database-password in that folder from a copy, or set SCANTLING_DATA_DIR to a new folder.',
    error,
  );
}

function stopper(
  programs: Awaited<ReturnType<typeof findPostgresPrograms>>,
  cluster: string,
  client: pg.Client,
): () => Promise<void> {
  const onExit = () => tellServerToStop(cluster);
  process.once('exit', onExit);
  let stopping: Promise<void> | undefined;
  return () => {
    stopping ??= stopServer(programs, cluster)
      .finally(() => client.end().catch(() => undefined))
      .then(() => {
        process.off('exit', onExit);
      });
    return stopping;
  };
}
