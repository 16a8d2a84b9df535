import { createRoute } from '@tanstack/react-router';
import { DesignScreen } from '../../features/designs/screens/design-screen.tsx';
import { DesignsScreen } from '../../features/designs/screens/designs-screen.tsx';
import { NewDesignScreen } from '../../features/designs/screens/new-design-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const designsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/designs',
  component: DesignsScreen,
});

const newDesignRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/designs/new',
  component: NewDesignScreen,
});

const designRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/designs/$designId',
  component: DesignScreen,
});

export const designRoutes = [designsRoute, newDesignRoute, designRoute] as const;
