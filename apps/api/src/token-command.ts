import { parseArgs } from 'node:util';
import { type Role, roleSchema } from '@scantling/contracts';
import { type Config, readConfig } from './config.ts';
import { connectOnce, openDatabase } from './database/connect.ts';
import { readRecord } from './database/data-folder.ts';
import { DatabaseError } from './database/database-error.ts';
import { explain } from './explain-error.ts';
import { createApiToken } from './features/api-tokens/create-api-token.ts';

const usage = `npm run token -- --role ${roleSchema.options.join('|')} --name NAME`;

/** A mistake in the command line. */
class UsageError extends Error {
  readonly code = 'usage';
  readonly mend = usage;
}

function readArguments(): { role: Role; name: string } {
  const options = { role: { type: 'string' }, name: { type: 'string' } } as const;
  let values: { role?: string | undefined; name?: string | undefined };
  try {
    values = parseArgs({ options }).values;
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error));
  }
  const role = roleSchema.safeParse(values.role);
  if (!role.success) throw new UsageError(`--role must be one of ${roleSchema.options.join(', ')}.`);
  const name = values.name?.trim() ?? '';
  if (name === '') throw new UsageError('--name must say what the token is for.');
  return { role: role.data, name };
}

/** The address of the database that the running product uses. */
async function findDatabase(config: Config): Promise<string> {
  const url = config.databaseUrl ?? readRecord(config.dataDir)?.url;
  const mend = 'Start Scantling first (npm start), with the same SCANTLING_DATA_DIR or DATABASE_URL.';
  if (url === undefined) {
    throw new DatabaseError('database-unreachable', `No database was started in ${config.dataDir}.`, mend);
  }
  try {
    await (await connectOnce(url)).end();
  } catch (error) {
    if (config.databaseUrl !== undefined || !(error instanceof DatabaseError)) throw error;
    throw new DatabaseError(error.code, `The database in ${config.dataDir} does not run.`, mend, error);
  }
  return url;
}

try {
  const wanted = readArguments();
  const database = openDatabase(await findDatabase(readConfig(process.env)), { maxConnections: 1 });
  try {
    const { token } = await createApiToken(database, wanted);
    process.stdout.write(`Keep this token; it is not shown again.\n${token}\n`);
  } finally {
    await database.$disconnect();
  }
} catch (error) {
  process.stderr.write(`${explain(error)}\n`);
  process.exitCode = 1;
}
