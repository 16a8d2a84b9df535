import { createUser } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { addUser } from '../../sign-in/add-user.ts';
import { toUser } from '../../sign-in/to-user.ts';

export const answerCreateUser = handle(createUser, async ({ body, services }) => {
  const { database } = services;
  const known = await database.user.findUnique({ where: { email: body.email }, select: { id: true } });
  if (known !== null)
    throw new RequestProblem('already-exists', {
      errors: [
        { field: 'email', message: 'belongs to another person already', mend: 'Use another e-mail address.' },
      ],
    });
  return toUser(await addUser(database, body));
});
