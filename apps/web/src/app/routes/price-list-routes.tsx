import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const getParentRoute = () => shellRoute;

/** Addresses of price lists may keep one supplier's. */
function validateSearch(search: Record<string, unknown>): { supplier?: string | undefined } {
  return search.supplier === undefined ? {} : { supplier: String(search.supplier) };
}

export const priceListRoutes = [
  createRoute({
    getParentRoute,
    path: '/price-lists',
    validateSearch,
    component: lazyRouteComponent(
      () => import('../../features/price-lists/screens/price-lists-screen.tsx'),
      'PriceListsScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/price-lists/import',
    validateSearch,
    component: lazyRouteComponent(
      () => import('../../features/price-lists/screens/start-import-screen.tsx'),
      'StartImportScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/price-lists/articles',
    // `linked=no` shows only those that are no material yet.
    validateSearch: (
      search: Record<string, unknown>,
    ): { supplier?: string | undefined; linked?: 'no' | undefined } => ({
      ...validateSearch(search),
      ...(search.linked === 'no' ? { linked: 'no' } : {}),
    }),
    component: lazyRouteComponent(
      () => import('../../features/price-lists/screens/articles-screen.tsx'),
      'ArticlesScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/price-lists/imports/$importId',
    component: lazyRouteComponent(
      () => import('../../features/price-lists/screens/price-import-screen.tsx'),
      'PriceImportScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/price-lists/$priceListId/impact',
    component: lazyRouteComponent(
      () => import('../../features/price-impacts/screens/price-impact-screen.tsx'),
      'PriceImpactScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/price-lists/$priceListId',
    validateSearch: (search: Record<string, unknown>): { line?: string | undefined } =>
      search.line === undefined ? {} : { line: String(search.line) },
    component: lazyRouteComponent(
      () => import('../../features/price-lists/screens/price-list-screen.tsx'),
      'PriceListScreen',
    ),
  }),
  createRoute({
    getParentRoute,
    path: '/exchange-rates',
    component: lazyRouteComponent(
      () => import('../../features/exchange-rates/screens/exchange-rates-screen.tsx'),
      'ExchangeRatesScreen',
    ),
  }),
] as const;
