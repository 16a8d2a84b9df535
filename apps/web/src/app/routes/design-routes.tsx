import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const designsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/designs',
  component: lazyRouteComponent(
    () => import('../../features/designs/screens/designs-screen.tsx'),
    'DesignsScreen',
  ),
});

const newDesignRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/designs/new',
  component: lazyRouteComponent(
    () => import('../../features/designs/screens/new-design-screen.tsx'),
    'NewDesignScreen',
  ),
});

const designRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/designs/$designId',
  component: lazyRouteComponent(
    () => import('../../features/designs/screens/design-screen.tsx'),
    'DesignScreen',
  ),
});

export const designRoutes = [designsRoute, newDesignRoute, designRoute] as const;
