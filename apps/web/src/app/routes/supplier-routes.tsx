import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const getParentRoute = () => shellRoute;

export const supplierRoutes = [
  createRoute({
    getParentRoute,
    path: '/suppliers',
    component: lazyRouteComponent(
      () => import('../../features/suppliers/screens/suppliers-screen.tsx'),
      'SuppliersScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/suppliers/new',
    component: lazyRouteComponent(
      () => import('../../features/suppliers/screens/supplier-screen.tsx'),
      'SupplierScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/suppliers/$supplierId',
    component: lazyRouteComponent(
      () => import('../../features/suppliers/screens/supplier-screen.tsx'),
      'SupplierScreen',
    ),
  }),
] as const;
