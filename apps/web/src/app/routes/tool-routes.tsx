import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

const toolsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/tools',
  component: lazyRouteComponent(() => import('../../features/tools/screens/tools-screen.tsx'), 'ToolsScreen'),
});
const newToolRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/tools/new',
  component: lazyRouteComponent(
    () => import('../../features/tools/screens/new-tool-screen.tsx'),
    'NewToolScreen',
  ),
});
const toolRegisterRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/tools/register',
  component: lazyRouteComponent(
    () => import('../../features/tools/screens/tool-register-screen.tsx'),
    'ToolRegisterScreen',
  ),
});
const toolRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/tools/$toolId',
  component: lazyRouteComponent(() => import('../../features/tools/screens/tool-screen.tsx'), 'ToolScreen'),
});

export const toolRoutes = [toolsRoute, newToolRoute, toolRegisterRoute, toolRoute] as const;
