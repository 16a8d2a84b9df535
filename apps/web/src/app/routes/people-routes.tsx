import { createRoute } from '@tanstack/react-router';
import { NewPersonScreen } from '../../features/people/screens/new-person-screen.tsx';
import { PeopleScreen } from '../../features/people/screens/people-screen.tsx';
import { PersonScreen } from '../../features/people/screens/person-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const peopleRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/people',
  component: PeopleScreen,
});
const newPersonRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/people/new',
  component: NewPersonScreen,
});
const personRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/people/$personId',
  component: PersonScreen,
});

export const peopleRoutes = [peopleRoute, newPersonRoute, personRoute] as const;
