import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const peopleRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/people',
  component: lazyRouteComponent(
    () => import('../../features/people/screens/people-screen.tsx'),
    'PeopleScreen',
  ),
});
const newPersonRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/people/new',
  component: lazyRouteComponent(
    () => import('../../features/people/screens/new-person-screen.tsx'),
    'NewPersonScreen',
  ),
});
const personRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/people/$personId',
  component: lazyRouteComponent(
    () => import('../../features/people/screens/person-screen.tsx'),
    'PersonScreen',
  ),
});

export const peopleRoutes = [peopleRoute, newPersonRoute, personRoute] as const;
