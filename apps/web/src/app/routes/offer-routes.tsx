import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../root-route.tsx';

/** The client's page: outside of the gate, for whoever has the link. */
export const offerRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/offers/$token',
  component: lazyRouteComponent(
    () => import('../../features/offers/screens/offer-screen.tsx'),
    'OfferScreen',
  ),
});
