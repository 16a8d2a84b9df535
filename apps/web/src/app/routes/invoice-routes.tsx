import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const invoicesRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/invoices',
  validateSearch: (
    search: Record<string, unknown>,
  ): { state?: string | undefined; kind?: string | undefined } => ({
    ...(search.state === undefined ? {} : { state: String(search.state) }),
    ...(search.kind === undefined ? {} : { kind: String(search.kind) }),
  }),
  component: lazyRouteComponent(
    () => import('../../features/invoices/screens/invoices-screen.tsx'),
    'InvoicesScreen',
  ),
});

const overdueRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/invoices/overdue',
  component: lazyRouteComponent(
    () => import('../../features/invoices/screens/overdue-screen.tsx'),
    'OverdueScreen',
  ),
});

const invoiceRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/invoices/$invoiceId',
  component: lazyRouteComponent(
    () => import('../../features/invoices/screens/invoice-screen.tsx'),
    'InvoiceScreen',
  ),
});

const quoteMoneyRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/quotes/$quoteId/money',
  component: lazyRouteComponent(
    () => import('../../features/invoices/screens/quote-money-screen.tsx'),
    'QuoteMoneyScreen',
  ),
});

const clientStatementRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/clients/$clientId/statement',
  component: lazyRouteComponent(
    () => import('../../features/invoices/screens/client-statement-screen.tsx'),
    'ClientStatementScreen',
  ),
});

export const invoiceRoutes = [
  invoicesRoute,
  overdueRoute,
  invoiceRoute,
  quoteMoneyRoute,
  clientStatementRoute,
] as const;
