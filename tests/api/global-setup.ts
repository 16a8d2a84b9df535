import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { connectOnce } from '../../apps/api/src/database/connect.ts';
import { startEmbeddedPostgres } from '../../apps/api/src/database/embedded-postgres.ts';
import { migrate } from '../../apps/api/src/database/migrate.ts';
import { templateName, withDatabase } from './test-database.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** A database of the test run's PostgreSQL from which others can be made. */
    databaseServerUrl: string;
  }
}

/** One real PostgreSQL for the whole run, with one migrated database that every test file copies. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const dataDir = mkdtempSync(join(tmpdir(), 'scantling-test-'));
  const server = await startEmbeddedPostgres({ dataDir, log: () => undefined, isDurable: false });
  // A run that is told to end shall not leave its server behind: the server is ended when the process exits.
  process.once('SIGTERM', () => process.exit(143));
  const client = await connectOnce(server.url);
  await client.query(`create database ${templateName}`);
  await client.end();
  await migrate(withDatabase(server.url, templateName));
  project.provide('databaseServerUrl', server.url);
  return async () => {
    await server.stop();
    rmSync(dataDir, { recursive: true, force: true });
  };
}
