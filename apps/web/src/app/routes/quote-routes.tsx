import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

/** Texts of the address by name; what is not there is left out. */
function texts<Name extends string>(
  search: Record<string, unknown>,
  names: readonly Name[],
): { [Key in Name]?: string | undefined } {
  const found: { [Key in Name]?: string | undefined } = {};
  for (const name of names) if (search[name] !== undefined) found[name] = String(search[name]);
  return found;
}

const quotesRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/quotes',
  validateSearch: (search: Record<string, unknown>) => texts(search, ['state', 'clientId']),
  component: lazyRouteComponent(
    () => import('../../features/quotes/screens/quotes-screen.tsx'),
    'QuotesScreen',
  ),
});

const newQuoteRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/quotes/new',
  // What leads here: a cost sheet, or an enquiry with its client and title.
  validateSearch: (search: Record<string, unknown>) =>
    texts(search, ['costSheetId', 'enquiryId', 'clientId', 'title']),
  component: lazyRouteComponent(
    () => import('../../features/quotes/screens/new-quote-screen.tsx'),
    'NewQuoteScreen',
  ),
});

const quoteRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/quotes/$quoteId',
  // A revision or addition other than the one that holds.
  validateSearch: (search: Record<string, unknown>) => texts(search, ['revision']),
  component: lazyRouteComponent(
    () => import('../../features/quotes/screens/quote-screen.tsx'),
    'QuoteScreen',
  ),
});

export const quoteRoutes = [quotesRoute, newQuoteRoute, quoteRoute] as const;
