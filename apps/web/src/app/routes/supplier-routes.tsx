import { createRoute } from '@tanstack/react-router';
import { SupplierScreen } from '../../features/suppliers/screens/supplier-screen.tsx';
import { SuppliersScreen } from '../../features/suppliers/screens/suppliers-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const getParentRoute = () => shellRoute;

export const supplierRoutes = [
  createRoute({ getParentRoute, path: '/suppliers', component: SuppliersScreen }),
  createRoute({ getParentRoute, path: '/suppliers/new', component: SupplierScreen }),
  createRoute({ getParentRoute, path: '/suppliers/$supplierId', component: SupplierScreen }),
] as const;
