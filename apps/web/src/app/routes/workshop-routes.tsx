import { createRoute } from '@tanstack/react-router';
import { WorkshopScreen } from '../../features/workshop/screens/workshop-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const workshopRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/workshop',
  component: WorkshopScreen,
});

export const workshopRoutes = [workshopRoute] as const;
