import { MAIL_STATES, type MailState } from '@scantling/contracts';
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { shellRoute } from '../shell-route.tsx';

/** The list may keep to one state. */
function validateSearch(search: Record<string, unknown>): { state?: MailState | undefined } {
  const state = MAIL_STATES.find((one) => one === search.state);
  return state === undefined ? {} : { state };
}

const mailsRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/mail',
  validateSearch,
  component: lazyRouteComponent(() => import('../../features/mail/screens/mails-screen.tsx'), 'MailsScreen'),
});
const mailRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/mail/$mailId',
  component: lazyRouteComponent(() => import('../../features/mail/screens/mail-screen.tsx'), 'MailScreen'),
});

export const mailRoutes = [mailsRoute, mailRoute] as const;
