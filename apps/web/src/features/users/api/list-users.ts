import { listUsers, type User } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export const usersQuery = queryOptions({
  queryKey: ['users', 'list'],
  queryFn: ({ signal }) => everyItem<User>(listUsers, {}, signal),
});
