import type { QueryClient } from '@tanstack/react-query';
import { createRouter } from '@tanstack/react-router';
import { Loading } from '../components/progress.tsx';
import { rootRoute } from './root-route.tsx';
import { benchRoute } from './routes/bench-routes.tsx';
import { clientRoutes } from './routes/client-routes.tsx';
import { costSheetRoutes } from './routes/cost-sheet-routes.tsx';
import { deliveryNoteRoutes } from './routes/delivery-note-routes.tsx';
import { designRoutes } from './routes/design-routes.tsx';
import { enquiryRoutes } from './routes/enquiry-routes.tsx';
import { invoiceRoutes } from './routes/invoice-routes.tsx';
import { labourGradeRoutes } from './routes/labour-grade-routes.tsx';
import { mailRoutes } from './routes/mail-routes.tsx';
import { materialRoutes } from './routes/material-routes.tsx';
import { offerRoute } from './routes/offer-routes.tsx';
import { overheadRoutes } from './routes/overhead-routes.tsx';
import { peopleRoutes } from './routes/people-routes.tsx';
import { priceListRoutes } from './routes/price-list-routes.tsx';
import { quoteRoutes } from './routes/quote-routes.tsx';
import { setUpRoute, signInRoute } from './routes/sign-in-routes.tsx';
import { supplierRoutes } from './routes/supplier-routes.tsx';
import { toolRoutes } from './routes/tool-routes.tsx';
import { userRoutes } from './routes/user-routes.tsx';
import { workshopRoutes } from './routes/workshop-routes.tsx';
import { shellRoute } from './shell-route.tsx';

const routeTree = rootRoute.addChildren([
  signInRoute,
  setUpRoute,
  offerRoute,
  shellRoute.addChildren([
    benchRoute,
    ...userRoutes,
    ...peopleRoutes,
    ...clientRoutes,
    ...mailRoutes,
    ...enquiryRoutes,
    ...overheadRoutes,
    ...labourGradeRoutes,
    ...workshopRoutes,
    ...priceListRoutes,
    ...materialRoutes,
    ...supplierRoutes,
    ...toolRoutes,
    ...designRoutes,
    ...costSheetRoutes,
    ...quoteRoutes,
    ...invoiceRoutes,
    ...deliveryNoteRoutes,
  ]),
]);

export function createAppRouter(queryClient: QueryClient) {
  return createRouter({
    routeTree,
    context: { queryClient },
    defaultPreload: 'intent',
    // The query client decides what is fresh; the router must not keep answers of its own.
    defaultPreloadStaleTime: 0,
    defaultPendingComponent: () => <Loading />,
    scrollRestoration: true,
  });
}

declare module '@tanstack/react-router' {
  interface Register {
    router: ReturnType<typeof createAppRouter>;
  }
}
