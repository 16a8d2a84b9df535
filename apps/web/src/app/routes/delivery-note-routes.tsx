import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const deliveryNotesRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/quotes/$quoteId/delivery-notes',
  component: lazyRouteComponent(
    () => import('../../features/delivery-notes/screens/delivery-notes-screen.tsx'),
    'DeliveryNotesScreen',
  ),
});

const deliveryNoteRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/delivery-notes/$deliveryNoteId',
  component: lazyRouteComponent(
    () => import('../../features/delivery-notes/screens/delivery-note-screen.tsx'),
    'DeliveryNoteScreen',
  ),
});

export const deliveryNoteRoutes = [deliveryNotesRoute, deliveryNoteRoute] as const;
