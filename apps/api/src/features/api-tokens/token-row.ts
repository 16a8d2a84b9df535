import { type ApiToken, isRole } from '@scantling/contracts';
import type { Prisma } from '../../generated/prisma/client.ts';

/** Reads a token's row with the name of who made it. */
export const WITH_CREATOR = { createdBy: { select: { name: true } } } as const;

type TokenRow = Prisma.ApiTokenGetPayload<{ include: typeof WITH_CREATOR }>;

/** A token as the API shows it: without its hash. */
export function toApiToken(row: TokenRow): ApiToken {
  return {
    id: row.id,
    name: row.name,
    role: isRole(row.role) ? row.role : 'read-only',
    prefix: row.prefix,
    createdBy: row.createdBy?.name ?? null,
    createdAt: row.createdAt.toISOString(),
    lastUsedAt: row.lastUsedAt?.toISOString() ?? null,
    revokedAt: row.revokedAt?.toISOString() ?? null,
  };
}
