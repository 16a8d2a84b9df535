import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';

/** The database, or a transaction in it. */
export type DatabaseAccess = Database | Prisma.TransactionClient;
