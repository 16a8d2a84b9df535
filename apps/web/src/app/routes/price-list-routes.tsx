import { createRoute } from '@tanstack/react-router';
import { ExchangeRatesScreen } from '../../features/exchange-rates/screens/exchange-rates-screen.tsx';
import { ArticlesScreen } from '../../features/price-lists/screens/articles-screen.tsx';
import { PriceImportScreen } from '../../features/price-lists/screens/price-import-screen.tsx';
import { PriceListScreen } from '../../features/price-lists/screens/price-list-screen.tsx';
import { PriceListsScreen } from '../../features/price-lists/screens/price-lists-screen.tsx';
import { StartImportScreen } from '../../features/price-lists/screens/start-import-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const getParentRoute = () => shellRoute;

/** Addresses of price lists may keep one supplier's. */
function validateSearch(search: Record<string, unknown>): { supplier?: string | undefined } {
  return search.supplier === undefined ? {} : { supplier: String(search.supplier) };
}

export const priceListRoutes = [
  createRoute({ getParentRoute, path: '/price-lists', validateSearch, component: PriceListsScreen }),
  createRoute({ getParentRoute, path: '/price-lists/import', validateSearch, component: StartImportScreen }),
  createRoute({ getParentRoute, path: '/price-lists/articles', validateSearch, component: ArticlesScreen }),
  createRoute({ getParentRoute, path: '/price-lists/imports/$importId', component: PriceImportScreen }),
  createRoute({ getParentRoute, path: '/price-lists/$priceListId', component: PriceListScreen }),
  createRoute({ getParentRoute, path: '/exchange-rates', component: ExchangeRatesScreen }),
] as const;
