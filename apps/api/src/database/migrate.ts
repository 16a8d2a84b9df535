import { join } from 'node:path';
import type pg from 'pg';
import { findCheckoutFolder } from '../checkout-folder.ts';
import { connectOnce } from './connect.ts';
import { DatabaseError, printableUrl } from './database-error.ts';
import { type MigrationFolder, readMigrationFolder } from './migration-folder.ts';
import { noFilter, toMigrationList, withSchemaEngine } from './schema-engine.ts';

// Any fixed number will do; it only has to differ from other advisory locks of this product.
const migrationLock = 7_261_001;

type AppliedRow = { migration_name: string; checksum: string; finished: boolean; logs: string | null };

async function readApplied(client: pg.Client): Promise<AppliedRow[]> {
  const table = await client.query<{ exists: boolean }>(
    `select to_regclass('_prisma_migrations') is not null as exists`,
  );
  if (table.rows[0]?.exists !== true) return [];
  const rows = await client.query<AppliedRow>(
    `select migration_name, checksum, finished_at is not null as finished, logs
       from _prisma_migrations where rolled_back_at is null order by started_at`,
  );
  return rows.rows;
}

/** The names of migrations not yet applied; refuses a database whose history is not this folder's. */
function findPending(url: string, migrations: MigrationFolder, applied: readonly AppliedRow[]): string[] {
  const known = new Map(migrations.migrations.map((migration) => [migration.name, migration]));
  for (const row of applied) {
    const migration = known.get(row.migration_name);
    if (!row.finished) {
      throw new DatabaseError(
        'migration-failed',
        `The migration ${row.migration_name} did not finish on ${printableUrl(url)}: ${row.logs ?? 'no reason recorded'}`,
        'Look whether its changes are there: set finished_at of its row in _prisma_migrations if they are, delete the row if not.',
      );
    }
    if (migration === undefined) {
      throw new DatabaseError(
        'database-newer',
        `The database at ${printableUrl(url)} holds the migration ${row.migration_name}, which this version does not know.`,
        'Start the newer version of Scantling that made it, or use another database.',
      );
    }
    if (migration.checksum !== row.checksum) {
      throw new DatabaseError(
        'migration-edited',
        `The migration ${row.migration_name} was edited after it had been applied to ${printableUrl(url)}.`,
        'Restore its migration.sql; a change to the tables is a new migration (npm run new-migration -- NAME).',
      );
    }
  }
  const done = new Set(applied.map((row) => row.migration_name));
  return migrations.migrations.map(({ name }) => name).filter((name) => !done.has(name));
}

function migrationError(url: string, error: unknown): DatabaseError {
  const why = error instanceof Error ? error.message : String(error);
  return new DatabaseError(
    'migration-failed',
    `The tables at ${printableUrl(url)} could not be brought up to date: ${why}`,
    'Give the database user the right to create tables, or mend what is named above, then start again; nothing was changed.',
    error,
  );
}

export type MigrateOptions = { migrationsFolder?: string };

/**
 * Brings the tables up to date from prisma/migrations and keeps the record in `_prisma_migrations`.
 * Costs one query where nothing is pending. Several programs may call it at once: one applies, the others wait.
 * @returns the names of the migrations it applied
 * @throws DatabaseError unreachable database, edited, unknown or failed migration
 */
export async function migrate(url: string, options: MigrateOptions = {}): Promise<string[]> {
  const folder = options.migrationsFolder ?? join(findCheckoutFolder(), 'prisma', 'migrations');
  const migrations = readMigrationFolder(folder);
  const client = await connectOnce(url);
  try {
    if (findPending(url, migrations, await readApplied(client)).length === 0) return [];
    await client.query('select pg_advisory_lock($1)', [migrationLock]);
    const pending = findPending(url, migrations, await readApplied(client));
    if (pending.length === 0) return [];
    const answer = await withSchemaEngine(url, (engine) =>
      engine.applyMigrations({ migrationsList: toMigrationList(migrations), filters: noFilter }),
    ).catch(async (error: unknown) => {
      // PostgreSQL took nothing of the script, so that the next start may try again.
      await client.query(
        `update _prisma_migrations set rolled_back_at = now()
          where finished_at is null and rolled_back_at is null and logs is not null`,
      );
      throw migrationError(url, error);
    });
    return answer.appliedMigrationNames;
  } finally {
    // The lock goes with its connection.
    await client.end();
  }
}
