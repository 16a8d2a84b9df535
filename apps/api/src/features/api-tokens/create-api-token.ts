import { createApiToken as contract, type Role } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import { handle } from '../../handle.ts';
import { hashOf, newSecret } from '../../sign-in/secret-text.ts';
import { toApiToken, WITH_CREATOR } from './token-row.ts';

const MARK = 'sct_';
const SHOWN_CHARACTERS = MARK.length + 4;

/**
 * Makes a token for a program. Only its hash is kept: the token in the answer cannot be had again.
 * @param random strong random bytes; the system's where none are given
 */
export async function createApiToken(
  database: Database,
  wanted: { name: string; role: Role; createdById?: string },
  random?: (size: number) => Buffer,
): Promise<{ token: string; id: string }> {
  const token = `${MARK}${newSecret(random)}`;
  const { id } = await database.apiToken.create({
    data: { ...wanted, hash: hashOf(token), prefix: token.slice(0, SHOWN_CHARACTERS) },
    select: { id: true },
  });
  return { token, id };
}

export const answerCreateApiToken = handle(contract, async ({ body, actor, services }) => {
  const { database, random } = services;
  const creator = actor.kind === 'user' ? { createdById: actor.id } : {};
  const { token, id } = await createApiToken(database, { ...body, ...creator }, random);
  const row = await database.apiToken.findUniqueOrThrow({ where: { id }, include: WITH_CREATOR });
  return { token, apiToken: toApiToken(row) };
});
