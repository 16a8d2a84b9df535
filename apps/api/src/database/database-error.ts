/** What can go wrong with the database before the product can serve anybody. */
export type DatabaseErrorCode =
  | 'database-unreachable'
  | 'database-sign-in-refused'
  | 'database-missing'
  | 'database-newer'
  | 'data-folder-in-use'
  | 'data-folder-version'
  | 'data-folder-unreachable'
  | 'data-folder-password'
  | 'postgres-not-installed'
  | 'postgres-account-missing'
  | 'postgres-would-not-start'
  | 'migration-edited'
  | 'migration-failed';

/** The message says what is wrong, `mend` what the person at the terminal can do about it. */
export class DatabaseError extends Error {
  override readonly name = 'DatabaseError';
  readonly code: DatabaseErrorCode;
  readonly mend: string;

  constructor(code: DatabaseErrorCode, message: string, mend: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
    this.mend = mend;
  }
}

/** The code that PostgreSQL or the network gave, where the error carries one. */
function codeOf(error: unknown): string {
  if (typeof error !== 'object' || error === null || !('code' in error)) return '';
  return typeof error.code === 'string' ? error.code : '';
}

/** The address without its password, fit to be printed. */
export function printableUrl(url: string): string {
  const parsed = new URL(url);
  if (parsed.password !== '') parsed.password = '***';
  return parsed.href;
}

// SQLSTATE classes after PostgreSQL's manual, appendix A; 28 = invalid authorization, 3D000 = no such database.
/** Turns what the driver threw while connecting into an error that names the mend. */
export function connectionError(url: string, error: unknown): DatabaseError {
  const code = codeOf(error);
  const at = printableUrl(url);
  if (code.startsWith('28')) {
    return new DatabaseError(
      'database-sign-in-refused',
      `The database at ${at} refused the user or the password.`,
      'Correct the user and password in DATABASE_URL.',
      error,
    );
  }
  if (code === '3D000') {
    return new DatabaseError(
      'database-missing',
      `The server answers, but there is no database of that name: ${at}.`,
      'Create it (CREATE DATABASE ...) or correct the name at the end of DATABASE_URL.',
      error,
    );
  }
  const why = error instanceof Error && error.message !== '' ? error.message : code;
  return new DatabaseError(
    'database-unreachable',
    `The database at ${at} cannot be reached${why === '' ? '' : ` (${why})`}.`,
    'Start the database server, or correct host and port in DATABASE_URL.',
    error,
  );
}
