import { createRoute } from '@tanstack/react-router';
import { NewToolScreen } from '../../features/tools/screens/new-tool-screen.tsx';
import { ToolRegisterScreen } from '../../features/tools/screens/tool-register-screen.tsx';
import { ToolScreen } from '../../features/tools/screens/tool-screen.tsx';
import { ToolsScreen } from '../../features/tools/screens/tools-screen.tsx';
import { shellRoute } from '../shell-route.tsx';

const toolsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/tools',
  component: ToolsScreen,
});
const newToolRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/tools/new',
  component: NewToolScreen,
});
const toolRegisterRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/tools/register',
  component: ToolRegisterScreen,
});
const toolRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/tools/$toolId',
  component: ToolScreen,
});

export const toolRoutes = [toolsRoute, newToolRoute, toolRegisterRoute, toolRoute] as const;
