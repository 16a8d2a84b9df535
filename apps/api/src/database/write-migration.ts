import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { diffSchemas, newLockfile } from './schema-engine.ts';

export type WriteMigrationOptions = {
  /** Any PostgreSQL; nothing is changed there. */
  url: string;
  /** What the migration does, in kebab-case or snake_case. */
  name: string;
  /** Holds schema.prisma and migrations/. */
  prismaFolder: string;
  now: Date;
};

/**
 * The SQL still missing from the migrations: from prisma/migrations/landed.prisma, the schema as the last migration
 * left it, to prisma/schema.prisma.
 */
export function diffFromLanded(url: string, prismaFolder: string): Promise<string> {
  const landed = join(prismaFolder, 'migrations', 'landed.prisma');
  const from = existsSync(landed) ? readFileSync(landed, 'utf8') : undefined;
  return diffSchemas(url, from, readFileSync(join(prismaFolder, 'schema.prisma'), 'utf8'));
}

/**
 * Writes the next migration and notes the schema it leads to.
 * @returns its folder, or nothing where the tables did not change
 * @throws Error where the name cannot be a folder's, or the schema cannot be read
 */
export async function writeMigration(options: WriteMigrationOptions): Promise<string | undefined> {
  const { url, name, prismaFolder, now } = options;
  if (!/^[a-z0-9]+([_-][a-z0-9]+)*$/.test(name)) {
    throw new Error(`'${name}' cannot name a migration: use lower-case letters, digits, - and _.`);
  }
  const sql = await diffFromLanded(url, prismaFolder);
  if (sql.trim() === '') return undefined;
  const folder = join(prismaFolder, 'migrations');
  const stamp = now.toISOString().replace(/\D/g, '').slice(0, 14);
  const written = join(folder, `${stamp}_${name}`);
  mkdirSync(written, { recursive: true });
  writeFileSync(join(written, 'migration.sql'), `${sql.trimEnd()}\n`);
  writeFileSync(join(folder, 'migration_lock.toml'), newLockfile);
  writeFileSync(join(folder, 'landed.prisma'), readFileSync(join(prismaFolder, 'schema.prisma')));
  return written;
}
