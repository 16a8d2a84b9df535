import { spawnSync } from 'node:child_process';
import {
  chownSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { DatabaseError } from './database-error.ts';
import { type PostgresPrograms, runPostgresProgram } from './postgres-programs.ts';

/** Largest log carried over into the next start, in bytes. */
const largestLog = 5_000_000;

function giveTo(programs: PostgresPrograms, path: string): void {
  const { uid, gid } = programs.account;
  if (uid !== undefined && gid !== undefined) chownSync(path, uid, gid);
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it lives, but belongs to somebody else.
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/** What the server wrote about itself: its process and the port it listens on. */
export type RunningServer = { pid: number; port: number };

/** The server that runs on this cluster, if one does (PostgreSQL's own postmaster.pid: line 1 process, line 4 port). */
export function findRunningServer(cluster: string): RunningServer | undefined {
  const path = join(cluster, 'postmaster.pid');
  if (!existsSync(path)) return undefined;
  const lines = readFileSync(path, 'utf8').split('\n');
  const pid = Number(lines[0]);
  if (!Number.isInteger(pid) || pid <= 0 || !isAlive(pid)) return undefined;
  const asked = spawnSync('ps', ['-o', 'stat= comm=', '-p', String(pid)], { encoding: 'utf8' });
  const isGone = asked.stdout?.startsWith('Z') ?? false;
  if (asked.status === 0 && (isGone || !asked.stdout.includes('postgres'))) {
    // After a crash or a restart of the machine the number may be a dead or another process: the server would refuse
    // to start over it.
    rmSync(path, { force: true });
    return undefined;
  }
  return { pid, port: Number(lines[3] ?? '') };
}

/** Removes clusters whose making was cut short. */
function removeUnfinished(folder: string): void {
  for (const name of readdirSync(folder)) {
    const maker = /^postgres\.new-(\d+)$/.exec(name)?.[1];
    if (maker !== undefined && !isAlive(Number(maker))) {
      rmSync(join(folder, name), { recursive: true, force: true });
    }
  }
}

/** Makes the cluster beside its final place and moves it there whole, so that a kill leaves none half-made. */
export async function createCluster(
  programs: PostgresPrograms,
  cluster: string,
  password: string,
): Promise<void> {
  const folder = dirname(cluster);
  removeUnfinished(folder);
  const next = join(folder, `postgres.new-${process.pid}`);
  const passwordFile = join(folder, `password.new-${process.pid}`);
  rmSync(next, { recursive: true, force: true });
  mkdirSync(next, { mode: 0o700 });
  writeFileSync(passwordFile, password, { mode: 0o600 });
  giveTo(programs, next);
  giveTo(programs, passwordFile);
  try {
    await runPostgresProgram(programs, 'initdb', [
      `--pgdata=${next}`,
      `--pwfile=${passwordFile}`,
      '--username=postgres',
      '--auth=scram-sha-256',
      '--encoding=UTF8',
      '--locale=C',
      '--locale-provider=icu',
      '--icu-locale=und',
      '--set=listen_addresses=127.0.0.1',
      '--set=unix_socket_directories=',
      '--set=timezone=UTC',
      '--set=log_timezone=UTC',
    ]);
    if (!existsSync(cluster)) renameSync(next, cluster);
  } finally {
    rmSync(next, { recursive: true, force: true });
    rmSync(passwordFile, { force: true });
  }
}

/** @throws DatabaseError where the cluster was made by another major version than the programs are */
export function checkClusterVersion(programs: PostgresPrograms, cluster: string): void {
  const made = readFileSync(join(cluster, 'PG_VERSION'), 'utf8').trim();
  const major = /^\d+/.exec(programs.version)?.[0] ?? programs.version;
  if (made === major) return;
  throw new DatabaseError(
    'data-folder-version',
    `The data in ${cluster} was made by PostgreSQL ${made}; this is PostgreSQL ${major}.`,
    `Start the version of Scantling that used PostgreSQL ${made} and copy the data over, or set SCANTLING_DATA_DIR to a new folder.`,
  );
}

function logOf(cluster: string): string {
  return join(cluster, 'server.log');
}

export type StartOptions = { port: number; isDurable: boolean };

/** Starts the server in a session of its own, so that Ctrl-C in the terminal reaches the product first. */
export async function startServer(
  programs: PostgresPrograms,
  cluster: string,
  options: StartOptions,
): Promise<void> {
  const log = logOf(cluster);
  if (existsSync(log) && statSync(log).size > largestLog) renameSync(log, `${log}.1`);
  const hurried = '-c fsync=off -c synchronous_commit=off -c full_page_writes=off';
  const settings = `-p ${options.port}${options.isDurable ? '' : ` ${hurried}`}`;
  try {
    await runPostgresProgram(programs, 'pg_ctl', [
      'start',
      '-w',
      '-t',
      '60',
      '-D',
      cluster,
      '-l',
      log,
      '-o',
      settings,
    ]);
  } catch (error) {
    const tail = existsSync(log) ? readFileSync(log, 'utf8').trim().split('\n').slice(-8).join('\n') : '';
    throw new DatabaseError(
      'postgres-would-not-start',
      `The embedded PostgreSQL did not start. The last lines of ${log}:\n${tail}`,
      'Mend what the log names, or set DATABASE_URL to a PostgreSQL of your own.',
      error,
    );
  }
}

/** Ends the server: clients are cut off, open transactions rolled back, the data written. */
export async function stopServer(programs: PostgresPrograms, cluster: string): Promise<void> {
  if (findRunningServer(cluster) === undefined) return;
  await runPostgresProgram(programs, 'pg_ctl', ['stop', '-w', '-t', '60', '-m', 'fast', '-D', cluster]);
}

/** For a process that is about to end and cannot wait: tells the server to end by itself. */
export function tellServerToStop(cluster: string): void {
  const running = findRunningServer(cluster);
  // SIGINT is PostgreSQL's fast shutdown.
  if (running !== undefined) process.kill(running.pid, 'SIGINT');
}
