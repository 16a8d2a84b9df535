import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { PrismaPg } from '@prisma/adapter-pg';
import {
  bindMigrationAwareSqlAdapterFactory,
  DriverAdapterError,
  type SqlMigrationAwareDriverAdapterFactory,
} from '@prisma/driver-adapter-utils';
import type { MigrationList, SchemaEngine } from '@prisma/schema-engine-wasm';
import * as glue from '@prisma/schema-engine-wasm/schema_engine_bg';
import pg from 'pg';
import type { MigrationFolder } from './migration-folder.ts';

/** The part of the WebAssembly standard used here; Node has it, but its type package leaves it to the DOM's. */
type WebAssemblyLoader = {
  instantiate: (
    bytes: Uint8Array,
    imports: Record<string, Record<string, unknown>>,
  ) => Promise<{ instance: { exports: Record<string, unknown> } }>;
};

function isLoader(value: unknown): value is WebAssemblyLoader {
  return typeof value === 'object' && value !== null && 'instantiate' in value;
}

// The package imports its .wasm as a module, which Node 20 cannot do without a flag: it is put together by hand.
async function loadEngine(): Promise<void> {
  const loader: unknown = Reflect.get(globalThis, 'WebAssembly');
  if (!isLoader(loader))
    throw new Error('This program was started without WebAssembly, which migrations need.');
  const require = createRequire(import.meta.url);
  const folder = dirname(require.resolve('@prisma/schema-engine-wasm/schema_engine_bg'));
  const bytes = await readFile(join(folder, 'schema_engine_bg.wasm'));
  const { instance } = await loader.instantiate(bytes, { './schema_engine_bg.js': { ...glue } });
  glue.__wbg_set_wasm(instance.exports);
  const start = instance.exports.__wbindgen_start;
  if (typeof start !== 'function') throw new Error('schema_engine_bg.wasm has no __wbindgen_start');
  start();
}

/** The form in which the engine reads what PostgreSQL refused. */
function toAdapterError(error: unknown): unknown {
  if (!(error instanceof pg.DatabaseError)) return error;
  const { code = '', severity = 'ERROR', message, detail, column, hint } = error;
  return new DriverAdapterError({ kind: 'postgres', code, severity, message, detail, column, hint });
}

/**
 * The adapter cuts scripts at each semicolon, also inside functions and texts, and runs the pieces on their own.
 * Sent whole, PostgreSQL reads the script itself and takes all of it or nothing.
 */
function runScriptsWhole(pool: pg.Pool): SqlMigrationAwareDriverAdapterFactory {
  const factory = new PrismaPg(pool);
  return {
    provider: factory.provider,
    adapterName: factory.adapterName,
    connectToShadowDb: () => factory.connectToShadowDb(),
    connect: async () => {
      const adapter = await factory.connect();
      adapter.executeScript = async (script) => {
        await pool.query(script).catch((error: unknown) => {
          throw toAdapterError(error);
        });
      };
      return adapter;
    },
  };
}

let loading: Promise<void> | undefined;

/** Runs `work` with Prisma's schema engine on the database at `url`, and frees the engine afterwards. */
export async function withSchemaEngine<T>(
  url: string,
  work: (engine: SchemaEngine) => Promise<T>,
): Promise<T> {
  loading ??= loadEngine();
  await loading;
  // The engine leaves its connections open; a pool of our own can be ended.
  const pool = new pg.Pool({ connectionString: url });
  pool.on('error', () => undefined);
  const adapter = bindMigrationAwareSqlAdapterFactory(runScriptsWhole(pool));
  try {
    const engine = await glue.SchemaEngine.new({ datamodels: undefined }, () => undefined, adapter);
    try {
      return await work(engine);
    } finally {
      engine.free();
    }
  } finally {
    await pool.end();
  }
}

/** The file that says for which kind of database the migrations are. */
export const newLockfile = `# Kept by the migration tool; do not edit.
provider = "postgresql"
`;

/** No table or enum is kept out of migrations. */
export const noFilter = { externalTables: [], externalEnums: [] };

/** The migrations of a folder in the form the engine reads. */
export function toMigrationList(migrations: MigrationFolder): MigrationList {
  return {
    baseDir: migrations.folder,
    lockfile: { path: 'migration_lock.toml', content: migrations.lockfile ?? newLockfile },
    shadowDbInitScript: '',
    migrationDirectories: migrations.migrations.map(({ name, sql }) => ({
      path: name,
      migrationFile: { path: 'migration.sql', content: { tag: 'ok', value: sql } },
    })),
  };
}

/**
 * The SQL that leads from one text in Prisma's schema language to another; empty where nothing changes.
 * `url` is any PostgreSQL: the engine asks it for its version and changes nothing there.
 */
export async function diffSchemas(url: string, from: string | undefined, to: string): Promise<string> {
  const target = (content: string) => ({
    tag: 'schemaDatamodel' as const,
    files: [{ path: 'schema.prisma', content }],
  });
  const answer = await withSchemaEngine(url, (engine) =>
    engine.diff({
      from: from === undefined ? { tag: 'empty' } : target(from),
      to: target(to),
      script: true,
      exitCode: true,
      filters: noFilter,
    }),
  );
  return answer.exitCode === 0 ? '' : (answer.stdout ?? '');
}
