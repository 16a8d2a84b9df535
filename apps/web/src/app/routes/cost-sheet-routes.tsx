import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { comparisonIn } from '../../features/cost-sheets/components/comparison-search.ts';
import { sensitivityIn, solveIn } from '../../features/cost-sheets/components/question-search.ts';
import { riskIn } from '../../features/cost-sheets/components/risk-search.ts';
import { shellRoute } from '../shell-route.tsx';

const costSheetsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets',
  component: lazyRouteComponent(
    () => import('../../features/cost-sheets/screens/cost-sheets-screen.tsx'),
    'CostSheetsScreen',
  ),
});

const newCostSheetRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/new',
  // The design the sheet is made for, where one leads here.
  validateSearch: (search: Record<string, unknown>): { designId?: string | undefined } =>
    search.designId === undefined ? {} : { designId: String(search.designId) },
  component: lazyRouteComponent(
    () => import('../../features/cost-sheets/screens/new-cost-sheet-screen.tsx'),
    'NewCostSheetScreen',
  ),
});

const costSheetRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/$sheetId',
  component: lazyRouteComponent(
    () => import('../../features/cost-sheets/screens/cost-sheet-screen.tsx'),
    'CostSheetScreen',
  ),
});

const compareRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/$sheetId/compare',
  // What it is compared with, so that a comparison can be sent to somebody.
  validateSearch: comparisonIn,
  component: lazyRouteComponent(
    () => import('../../features/cost-sheets/screens/compare-screen.tsx'),
    'CompareScreen',
  ),
});

const scenariosRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/$sheetId/scenarios',
  // Which scenarios stand side by side, and at how many pieces, so that a comparison can be sent to somebody.
  validateSearch: (
    search: Record<string, unknown>,
  ): { with?: string | undefined; shownFor?: string | undefined } => ({
    ...(search.with === undefined ? {} : { with: String(search.with) }),
    ...(search.shownFor === undefined ? {} : { shownFor: String(search.shownFor) }),
  }),
  component: lazyRouteComponent(
    () => import('../../features/cost-sheets/screens/compare-scenarios-screen.tsx'),
    'CompareScenariosScreen',
  ),
});

const sensitivityRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/$sheetId/sensitivity',
  validateSearch: sensitivityIn,
  component: lazyRouteComponent(
    () => import('../../features/cost-sheets/screens/sensitivity-screen.tsx'),
    'SensitivityScreen',
  ),
});

const solveRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/$sheetId/solve',
  validateSearch: solveIn,
  component: lazyRouteComponent(
    () => import('../../features/cost-sheets/screens/solve-screen.tsx'),
    'SolveScreen',
  ),
});

const riskRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/$sheetId/risk',
  validateSearch: riskIn,
  component: lazyRouteComponent(
    () => import('../../features/cost-sheets/screens/risk-screen.tsx'),
    'RiskScreen',
  ),
});

export const costSheetRoutes = [
  costSheetsRoute,
  newCostSheetRoute,
  costSheetRoute,
  compareRoute,
  scenariosRoute,
  sensitivityRoute,
  solveRoute,
  riskRoute,
] as const;
