import { createRoute } from '@tanstack/react-router';
import { CostSheetScreen } from '../../features/cost-sheets/screens/cost-sheet-screen.tsx';
import { CostSheetsScreen } from '../../features/cost-sheets/screens/cost-sheets-screen.tsx';
import { NewCostSheetScreen } from '../../features/cost-sheets/screens/new-cost-sheet-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const costSheetsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets',
  component: CostSheetsScreen,
});

const newCostSheetRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/new',
  // The design the sheet is made for, where one leads here.
  validateSearch: (search: Record<string, unknown>): { designId?: string | undefined } =>
    search.designId === undefined ? {} : { designId: String(search.designId) },
  component: NewCostSheetScreen,
});

const costSheetRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/cost-sheets/$sheetId',
  component: CostSheetScreen,
});

export const costSheetRoutes = [costSheetsRoute, newCostSheetRoute, costSheetRoute] as const;
