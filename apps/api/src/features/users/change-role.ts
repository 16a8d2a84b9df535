import { changeRole, type Role } from '@scantling/contracts';
import type { User } from '../../generated/prisma/client.ts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import type { Services } from '../../services.ts';
import { toUser } from '../../sign-in/to-user.ts';
import { requireAnotherOwner, revokeTokensOf } from './owners.ts';

function giveRole(services: Services, id: string, role: Role): Promise<User> {
  return services.database.$transaction(async (transaction) => {
    if (role === 'owner') {
      if ((await transaction.user.count({ where: { id } })) === 0) throw notFound('person');
    } else {
      await requireAnotherOwner(transaction, id);
      await revokeTokensOf(transaction, id, { exceptRoles: [role, 'read-only'], now: services.clock() });
    }
    return transaction.user.update({ where: { id }, data: { role } });
  });
}

export const answerChangeRole = handle(changeRole, async ({ params, body, services }) =>
  toUser(await giveRole(services, params.id, body.role)),
);
