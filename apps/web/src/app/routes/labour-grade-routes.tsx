import { createRoute } from '@tanstack/react-router';
import { LabourGradeScreen } from '../../features/labour-grades/screens/labour-grade-screen.tsx';
import { LabourGradesScreen } from '../../features/labour-grades/screens/labour-grades-screen.tsx';
import { NewLabourGradeScreen } from '../../features/labour-grades/screens/new-labour-grade-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const labourGradesRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/labour-grades',
  component: LabourGradesScreen,
});
const newLabourGradeRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/labour-grades/new',
  component: NewLabourGradeScreen,
});
const labourGradeRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/labour-grades/$gradeId',
  component: LabourGradeScreen,
});

export const labourGradeRoutes = [labourGradesRoute, newLabourGradeRoute, labourGradeRoute] as const;
