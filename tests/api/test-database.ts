import { randomBytes } from 'node:crypto';
import { inject } from 'vitest';
import { connectOnce, type Database, openDatabase } from '../../apps/api/src/database/connect.ts';

/** The migrated, empty database that is copied for each test file. */
export const templateName = 'scantling_template';

/** The same server's address with another database. */
export function withDatabase(url: string, name: string): string {
  const parsed = new URL(url);
  parsed.pathname = `/${name}`;
  return parsed.href;
}

export type TestDatabase = {
  url: string;
  database: Database;
  /** Closes the connections and removes the database. */
  drop: () => Promise<void>;
};

async function onServer(sql: string): Promise<void> {
  const client = await connectOnce(inject('databaseServerUrl'));
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

async function createDatabase(name: string, sql: string): Promise<TestDatabase> {
  await onServer(sql);
  const url = withDatabase(inject('databaseServerUrl'), name);
  const database = openDatabase(url, { maxConnections: 4 });
  return {
    url,
    database,
    drop: async () => {
      await database.$disconnect();
      await onServer(`drop database ${name} with (force)`);
    },
  };
}

function newName(): string {
  return `test_${randomBytes(6).toString('hex')}`;
}

/** A migrated, empty database of its own on the run's PostgreSQL; call `drop` in afterAll. */
export function createTestDatabase(): Promise<TestDatabase> {
  const name = newName();
  return createDatabase(name, `create database ${name} template ${templateName} strategy file_copy`);
}

/** A database without any table. */
export function createBareDatabase(): Promise<TestDatabase> {
  const name = newName();
  return createDatabase(name, `create database ${name}`);
}
