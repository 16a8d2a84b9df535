import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { OWNER_ONLY } from '../roles.ts';
import { exampleUser } from './user.ts';

export const removeUser = defineContract({
  name: 'remove-user',
  method: 'DELETE',
  path: '/api/users/:id',
  summary: 'Remove a person',
  description: 'Ends their sessions and revokes the API tokens they made. The last owner cannot be removed.',
  tag: 'users',
  roles: OWNER_ONLY,
  params: recordParams,
  example: { params: { id: exampleUser.id } },
});
