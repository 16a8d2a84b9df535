import { createRoute } from '@tanstack/react-router';
import { NewOverheadAmountScreen } from '../../features/overhead/screens/new-overhead-amount-screen.tsx';
import { OverheadAmountScreen } from '../../features/overhead/screens/overhead-amount-screen.tsx';
import { OverheadScreen } from '../../features/overhead/screens/overhead-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const overheadRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/overhead',
  component: OverheadScreen,
});
const newOverheadAmountRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/overhead/new',
  component: NewOverheadAmountScreen,
});
const overheadAmountRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/overhead/$amountId',
  component: OverheadAmountScreen,
});

export const overheadRoutes = [overheadRoute, newOverheadAmountRoute, overheadAmountRoute] as const;
