import type { Prisma, User } from '../../generated/prisma/client.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';

/**
 * Reads a person who is about to lose a role, with all owners locked, so that two owners cannot remove each other
 * at once.
 * @throws RequestProblem not-found, last-owner
 */
export async function requireAnotherOwner(
  transaction: Prisma.TransactionClient,
  userId: string,
): Promise<User> {
  const owners = await transaction.$queryRaw<
    { id: string }[]
  >`select id from "User" where role = 'owner' order by id for update`;
  const user = await transaction.user.findUnique({ where: { id: userId } });
  if (user === null) throw notFound('person');
  if (owners.length === 1 && owners[0]?.id === userId) throw new RequestProblem('last-owner');
  return user;
}

/** Revokes the API tokens a person made, except those of the roles named. */
export async function revokeTokensOf(
  transaction: Prisma.TransactionClient,
  userId: string,
  options: { exceptRoles: readonly string[]; now: Date },
): Promise<void> {
  await transaction.apiToken.updateMany({
    where: { createdById: userId, revokedAt: null, role: { notIn: [...options.exceptRoles] } },
    data: { revokedAt: options.now },
  });
}
