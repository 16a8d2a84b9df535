import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const usersRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/users',
  component: lazyRouteComponent(() => import('../../features/users/screens/users-screen.tsx'), 'UsersScreen'),
});
const apiTokensRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/api-tokens',
  component: lazyRouteComponent(
    () => import('../../features/api-tokens/screens/api-tokens-screen.tsx'),
    'ApiTokensScreen',
  ),
});

export const userRoutes = [usersRoute, apiTokensRoute] as const;
