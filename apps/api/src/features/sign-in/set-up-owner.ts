import { type BodyOf, setUpOwner } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import type { User } from '../../generated/prisma/client.ts';
import { handle } from '../../handle.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { addUser } from '../../sign-in/add-user.ts';
import { hashOf } from '../../sign-in/secret-text.ts';
import { toUser } from '../../sign-in/to-user.ts';

/** Uses the link up and enters the owner, or neither: taking the link's row lets only one of two at once through. */
function enterOwner(database: Database, given: BodyOf<typeof setUpOwner>): Promise<User> {
  const { token, workshopName, currency, ...person } = given;
  return database.$transaction(async (transaction) => {
    const used = await transaction.setUpLink.deleteMany({ where: { hash: hashOf(token) } });
    const owners = await transaction.user.count({ where: { role: 'owner' } });
    if (used.count === 0 || owners > 0) throw new RequestProblem('set-up-refused');
    // A workshop that is there takes the name but keeps its currency, in which its amounts stand.
    await transaction.workshop.upsert({
      where: { id: 1 },
      create: { name: workshopName, currency, settings: {} },
      update: { name: workshopName, version: { increment: 1 } },
    });
    return addUser(transaction, { ...person, role: 'owner' });
  });
}

export const answerSetUpOwner = handle(setUpOwner, async ({ body, services }) =>
  toUser(await enterOwner(services.database, body)),
);
