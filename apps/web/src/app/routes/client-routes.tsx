import { createRoute } from '@tanstack/react-router';
import { ClientScreen } from '../../features/clients/screens/client-screen.tsx';
import { ClientsScreen } from '../../features/clients/screens/clients-screen.tsx';
import { NewClientScreen } from '../../features/clients/screens/new-client-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const clientsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/clients',
  component: ClientsScreen,
});
const newClientRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/clients/new',
  component: NewClientScreen,
});
const clientRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/clients/$clientId',
  component: ClientScreen,
});

export const clientRoutes = [clientsRoute, newClientRoute, clientRoute] as const;
