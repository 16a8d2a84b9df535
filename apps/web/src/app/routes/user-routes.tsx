import { createRoute } from '@tanstack/react-router';
import { ApiTokensScreen } from '../../features/api-tokens/screens/api-tokens-screen.tsx';
import { UsersScreen } from '../../features/users/screens/users-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const usersRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/users',
  component: UsersScreen,
});
const apiTokensRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/api-tokens',
  component: ApiTokensScreen,
});

export const userRoutes = [usersRoute, apiTokensRoute] as const;
