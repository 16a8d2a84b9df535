import { removeUser } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { requireAnotherOwner, revokeTokensOf } from './owners.ts';

export const answerRemoveUser = handle(removeUser, async ({ params, services }) => {
  await services.database.$transaction(async (transaction) => {
    await requireAnotherOwner(transaction, params.id);
    await revokeTokensOf(transaction, params.id, { exceptRoles: [], now: services.clock() });
    await transaction.user.delete({ where: { id: params.id } });
  });
  return undefined;
});
