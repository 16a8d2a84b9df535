import { randomUUID } from 'node:crypto';
import type { Role } from '@scantling/contracts';
import { hashPassword } from 'better-auth/crypto';
import type { Prisma, User } from '../generated/prisma/client.ts';

export type NewUser = {
  name: string;
  /** In lower case. */
  email: string;
  password: string;
  role: Role;
  isDemo?: boolean;
};

/** Enters a person with a password; takes part in the caller's transaction where there is one. */
export async function addUser(transaction: Prisma.TransactionClient, user: NewUser): Promise<User> {
  const id = randomUUID();
  const password = await hashPassword(user.password);
  return transaction.user.create({
    data: {
      id,
      name: user.name,
      email: user.email,
      emailVerified: true,
      role: user.role,
      isDemo: user.isDemo ?? false,
      accounts: { create: { id: randomUUID(), accountId: id, providerId: 'credential', password } },
    },
  });
}
