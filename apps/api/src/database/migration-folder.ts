import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** One landed change of the tables; `checksum` is the SHA-256 that `_prisma_migrations` keeps. */
export type Migration = { name: string; sql: string; checksum: string };

export type MigrationFolder = { folder: string; lockfile: string | null; migrations: Migration[] };

/** Reads prisma/migrations, in the order in which the migrations are applied. A missing folder holds none. */
export function readMigrationFolder(folder: string): MigrationFolder {
  const lockPath = join(folder, 'migration_lock.toml');
  const names = existsSync(folder)
    ? readdirSync(folder, { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map((entry) => entry.name)
        .sort()
    : [];
  return {
    folder,
    lockfile: existsSync(lockPath) ? readFileSync(lockPath, 'utf8') : null,
    migrations: names.map((name) => {
      const sql = readFileSync(join(folder, name, 'migration.sql'), 'utf8');
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
    }),
  };
}
