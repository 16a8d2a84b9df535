import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { OWNER_ONLY, roleSchema } from '../roles.ts';
import { exampleUser, userSchema } from './user.ts';

export const changeRole = defineContract({
  name: 'change-role',
  method: 'PUT',
  path: '/api/users/:id/role',
  summary: 'Change what a person may do',
  description:
    'Holds from the next request on. API tokens the person made with a role beyond the new one are revoked. The last owner stays owner.',
  tag: 'users',
  roles: OWNER_ONLY,
  params: recordParams,
  body: z.strictObject({ role: roleSchema }),
  answer: userSchema,
  example: { params: { id: exampleUser.id }, body: { role: 'maker' }, answer: exampleUser },
});
