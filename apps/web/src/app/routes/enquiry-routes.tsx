import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const enquiriesRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/enquiries',
  component: lazyRouteComponent(
    () => import('../../features/enquiries/screens/enquiries-screen.tsx'),
    'EnquiriesScreen',
  ),
});
const newEnquiryRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/enquiries/new',
  component: lazyRouteComponent(
    () => import('../../features/enquiries/screens/new-enquiry-screen.tsx'),
    'NewEnquiryScreen',
  ),
});
const enquiryRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/enquiries/$enquiryId',
  component: lazyRouteComponent(
    () => import('../../features/enquiries/screens/enquiry-screen.tsx'),
    'EnquiryScreen',
  ),
});
const earlyPriceRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/enquiries/$enquiryId/early-price',
  component: lazyRouteComponent(
    () => import('../../features/enquiries/screens/early-price-screen.tsx'),
    'EarlyPriceScreen',
  ),
});
const keptEarlyPriceRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/enquiries/$enquiryId/early-prices/$number',
  component: lazyRouteComponent(
    () => import('../../features/enquiries/screens/kept-early-price-screen.tsx'),
    'KeptEarlyPriceScreen',
  ),
});

export const enquiryRoutes = [
  enquiriesRoute,
  newEnquiryRoute,
  enquiryRoute,
  earlyPriceRoute,
  keptEarlyPriceRoute,
] as const;
