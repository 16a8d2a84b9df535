import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const clientsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/clients',
  component: lazyRouteComponent(
    () => import('../../features/clients/screens/clients-screen.tsx'),
    'ClientsScreen',
  ),
});
const newClientRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/clients/new',
  component: lazyRouteComponent(
    () => import('../../features/clients/screens/new-client-screen.tsx'),
    'NewClientScreen',
  ),
});
const clientRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/clients/$clientId',
  component: lazyRouteComponent(
    () => import('../../features/clients/screens/client-screen.tsx'),
    'ClientScreen',
  ),
});

export const clientRoutes = [clientsRoute, newClientRoute, clientRoute] as const;
