import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const getParentRoute = () => shellRoute;

export const materialRoutes = [
  createRoute({
    getParentRoute,
    path: '/materials',
    component: lazyRouteComponent(
      () => import('../../features/materials/screens/materials-screen.tsx'),
      'MaterialsScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/materials/new',
    component: lazyRouteComponent(
      () => import('../../features/materials/screens/material-screen.tsx'),
      'MaterialScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/materials/$materialId',
    component: lazyRouteComponent(
      () => import('../../features/materials/screens/material-screen.tsx'),
      'MaterialScreen',
    ),
  }),
] as const;
