import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { PrismaClient } from '../generated/prisma/client.ts';
import { connectionError } from './database-error.ts';

const connectionTimeoutMillis = 5_000;
// A server that is away refuses at once; one that is only busy lets a request wait for its connection.
const poolWaitMillis = 30_000;

export type Database = PrismaClient;

/**
 * One connection of its own for work that Prisma has no word for (locks, CREATE DATABASE). The caller ends it.
 * @throws DatabaseError where the server cannot be reached, refuses the user or lacks the database
 */
export async function connectOnce(url: string): Promise<pg.Client> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis });
  // A server that goes away while the connection idles must not end the process; the next query fails by itself.
  client.on('error', () => undefined);
  try {
    await client.connect();
  } catch (error) {
    await client.end().catch(() => undefined);
    throw connectionError(url, error);
  }
  return client;
}

export type OpenOptions = {
  /** The most connections the pool opens; 10 where nothing is said. */
  maxConnections?: number;
  /** Told when an idle connection breaks. */
  onConnectionLost?: (error: Error) => void;
};

/** The database at a PostgreSQL address; connections are opened when first needed, `$disconnect()` ends them. */
export function openDatabase(url: string, options: OpenOptions = {}): Database {
  const lost = options.onConnectionLost ?? (() => undefined);
  const adapter = new PrismaPg(
    { connectionString: url, max: options.maxConnections ?? 10, connectionTimeoutMillis: poolWaitMillis },
    { onPoolError: lost, onConnectionError: lost },
  );
  return new PrismaClient({ adapter });
}
