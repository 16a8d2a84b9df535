import { createRoute } from '@tanstack/react-router';
import { MaterialScreen } from '../../features/materials/screens/material-screen.tsx';
import { MaterialsScreen } from '../../features/materials/screens/materials-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const getParentRoute = () => shellRoute;

export const materialRoutes = [
  createRoute({ getParentRoute, path: '/materials', component: MaterialsScreen }),
  createRoute({ getParentRoute, path: '/materials/new', component: MaterialScreen }),
  createRoute({ getParentRoute, path: '/materials/$materialId', component: MaterialScreen }),
] as const;
