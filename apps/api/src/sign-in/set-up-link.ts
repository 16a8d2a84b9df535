import type { Database } from '../database/connect.ts';
import { hashOf, newSecret } from './secret-text.ts';

const ONLY_ROW = 1;

/**
 * Makes the one-time link by which the first owner is set up; an earlier link stops working. Show the token as
 * `<address>/set-up#<token>`: what stands after the hash sign is never sent along or logged.
 * @returns undefined where an owner can sign in already; people of other roles cannot set anything up
 */
export async function createSetUpLink(database: Database): Promise<{ token: string } | undefined> {
  if ((await database.user.count({ where: { role: 'owner' } })) > 0) return undefined;
  const token = newSecret();
  const row = { hash: hashOf(token), createdAt: new Date() };
  await database.setUpLink.upsert({ where: { id: ONLY_ROW }, create: row, update: row });
  return { token };
}
