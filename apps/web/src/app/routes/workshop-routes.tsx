import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const workshopRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/workshop',
  component: lazyRouteComponent(
    () => import('../../features/workshop/screens/workshop-screen.tsx'),
    'WorkshopScreen',
  ),
});

export const workshopRoutes = [workshopRoute] as const;
