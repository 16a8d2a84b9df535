import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

/** The address names the part of the settings that is open, so that other screens can lead there. */
function validateSearch(search: Record<string, unknown>): { part?: 'letterhead' | 'quoting' | undefined } {
  const part = (['letterhead', 'quoting'] as const).find((one) => one === search.part);
  return part === undefined ? {} : { part };
}

const workshopRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/workshop',
  validateSearch,
  component: lazyRouteComponent(
    () => import('../../features/workshop/screens/workshop-screen.tsx'),
    'WorkshopScreen',
  ),
});

export const workshopRoutes = [workshopRoute] as const;
