import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const labourGradesRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/labour-grades',
  component: lazyRouteComponent(
    () => import('../../features/labour-grades/screens/labour-grades-screen.tsx'),
    'LabourGradesScreen',
  ),
});
const newLabourGradeRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/labour-grades/new',
  component: lazyRouteComponent(
    () => import('../../features/labour-grades/screens/new-labour-grade-screen.tsx'),
    'NewLabourGradeScreen',
  ),
});
const labourGradeRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/labour-grades/$gradeId',
  component: lazyRouteComponent(
    () => import('../../features/labour-grades/screens/labour-grade-screen.tsx'),
    'LabourGradeScreen',
  ),
});

export const labourGradeRoutes = [labourGradesRoute, newLabourGradeRoute, labourGradeRoute] as const;
