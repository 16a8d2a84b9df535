// npm run new-migration -- NAME: writes the SQL that leads from the landed migrations to prisma/schema.prisma.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { tsImport } from 'tsx/esm/api';
import { checkout } from './lib/checkout.mjs';

const name = process.argv[2];
if (name === undefined) {
  console.error('Say what the migration does: npm run new-migration -- add-supplier-phone');
  process.exit(2);
}
const { startEmbeddedPostgres } = await tsImport(
  '../apps/api/src/database/embedded-postgres.ts',
  import.meta.url,
);
const { writeMigration } = await tsImport('../apps/api/src/database/write-migration.ts', import.meta.url);

const dataDir = mkdtempSync(join(tmpdir(), 'scantling-migration-'));
const database = await startEmbeddedPostgres({ dataDir, log: () => {}, isDurable: false });
try {
  const prismaFolder = join(checkout, 'prisma');
  const written = await writeMigration({ url: database.url, name, prismaFolder, now: new Date() });
  console.log(
    written === undefined ? 'The tables have not changed.' : `Wrote ${relative(checkout, written)}`,
  );
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
} finally {
  await database.stop();
  rmSync(dataDir, { recursive: true, force: true });
}
