import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, chmodSync, constants, mkdirSync, readdirSync } from 'node:fs';
import { DatabaseError } from './database-error.ts';

/** Who runs PostgreSQL; without ids it is the present user. */
export type PostgresAccount = { uid?: number; gid?: number };

const accountName = 'postgres';

function idOf(kind: '-u' | '-g'): number | undefined {
  const asked = spawnSync('id', [kind, accountName], { encoding: 'utf8' });
  return asked.status === 0 ? Number(asked.stdout) : undefined;
}

function readAccount(): PostgresAccount | undefined {
  const uid = idOf('-u');
  const gid = idOf('-g');
  return uid === undefined || gid === undefined ? undefined : { uid, gid };
}

/**
 * PostgreSQL refuses to run as root: root hands it to the account `postgres`, made where there is none.
 * @throws DatabaseError where there is none and it cannot be made
 */
export function findPostgresAccount(): PostgresAccount {
  if (process.getuid?.() !== 0) return {};
  const found = readAccount();
  if (found !== undefined) return found;
  try {
    execFileSync('useradd', ['--system', '--user-group', '--no-create-home', accountName], { stdio: 'pipe' });
  } catch (error) {
    throw accountError(error);
  }
  const made = readAccount();
  if (made === undefined) throw accountError(undefined);
  return made;
}

function accountError(cause: unknown): DatabaseError {
  return new DatabaseError(
    'postgres-account-missing',
    'PostgreSQL does not run as root, and no account named postgres could be made.',
    'Start Scantling as an ordinary user, make an account named postgres, or set DATABASE_URL.',
    cause,
  );
}

function testAs(account: PostgresAccount, flag: '-x' | '-r', path: string): boolean {
  const { uid, gid } = account;
  if (uid === undefined || gid === undefined) return true;
  return spawnSync('/bin/sh', ['-c', `test ${flag} "$0"`, path], { uid, gid, cwd: '/' }).status === 0;
}

/** Whether the account can run the program: asked of the system, since every folder above it counts. */
export function canRun(program: string, account: PostgresAccount): boolean {
  return testAs(account, '-x', program) && testAs(account, '-r', program);
}

/** Whether the account can step into the folder. */
export function canEnter(folder: string, account: PostgresAccount): boolean {
  return testAs(account, '-x', folder);
}

/**
 * Makes the folder, and where it is new or holds only what `isOurs` knows, lets the account step into it.
 * @throws DatabaseError where it cannot be made or written to
 */
export function makeDataFolder(
  folder: string,
  account: PostgresAccount,
  isOurs: (name: string) => boolean,
): void {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o711 });
    accessSync(folder, constants.W_OK | constants.X_OK);
    if (!canEnter(folder, account) && readdirSync(folder).every(isOurs)) chmodSync(folder, 0o711);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new DatabaseError(
      'data-folder-unreachable',
      `The data folder ${folder} cannot be used: ${why}`,
      'Set SCANTLING_DATA_DIR to a folder that you own and may write to.',
      error,
    );
  }
}
