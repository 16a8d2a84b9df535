import { revokeApiToken } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { toApiToken, WITH_CREATOR } from './token-row.ts';

export const answerRevokeApiToken = handle(revokeApiToken, async ({ params, services }) => {
  const { database, clock } = services;
  await database.apiToken.updateMany({
    where: { id: params.id, revokedAt: null },
    data: { revokedAt: clock() },
  });
  const row = await database.apiToken.findUnique({ where: { id: params.id }, include: WITH_CREATOR });
  if (row === null) throw notFound('API token');
  return toApiToken(row);
});
