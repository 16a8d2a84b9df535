import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const overheadRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/overhead',
  component: lazyRouteComponent(
    () => import('../../features/overhead/screens/overhead-screen.tsx'),
    'OverheadScreen',
  ),
});
const newOverheadAmountRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/overhead/new',
  component: lazyRouteComponent(
    () => import('../../features/overhead/screens/new-overhead-amount-screen.tsx'),
    'NewOverheadAmountScreen',
  ),
});
const overheadAmountRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/overhead/$amountId',
  component: lazyRouteComponent(
    () => import('../../features/overhead/screens/overhead-amount-screen.tsx'),
    'OverheadAmountScreen',
  ),
});

export const overheadRoutes = [overheadRoute, newOverheadAmountRoute, overheadAmountRoute] as const;
