import { isRole, type User } from '@scantling/contracts';
import type { User as UserRow } from '../generated/prisma/client.ts';

/** A person as the API shows them. */
export function toUser(row: UserRow): User {
  return {
    id: row.id,
    name: row.name,
    email: row.email,
    role: isRole(row.role) ? row.role : 'read-only',
    isDemo: row.isDemo,
    createdAt: row.createdAt.toISOString(),
  };
}
