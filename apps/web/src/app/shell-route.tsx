import { useSuspenseQuery } from '@tanstack/react-query';
import { createRoute, Outlet, redirect, useRouter } from '@tanstack/react-router';
import { Menu } from '../components/menu.tsx';
import { sessionQuery } from '../features/sign-in/api/get-session.ts';
import { useSignOut } from '../features/sign-in/api/sign-out.ts';
import { IndexStrip } from './index-strip.tsx';
import { rootRoute } from './root-route.tsx';
import { ThemeChoice } from './theme-choice.tsx';

function Shell() {
  const { data: session } = useSuspenseQuery(sessionQuery);
  const router = useRouter();
  const signOut = useSignOut();
  const leave = {
    id: 'sign-out',
    label: 'Sign out',
    onAct: () => signOut.mutate(undefined, { onSuccess: () => void router.invalidate() }),
  };
  return (
    <>
      <a className="skip-link" href="#content">
        To the sheet
      </a>
      <IndexStrip>
        <ThemeChoice />
        <Menu look="quiet" label={session.user?.name ?? 'Nobody'} acts={[leave]} />
      </IndexStrip>
      <main id="content" className="page" tabIndex={-1}>
        {session.user?.isDemo && (
          <p className="demo-note">Demo: this workshop, its people and its prices are invented.</p>
        )}
        <Outlet />
      </main>
    </>
  );
}

/** Everything behind the sign-in gate hangs under this route. */
export const shellRoute = createRoute({
  getParentRoute: () => rootRoute,
  id: 'shell',
  beforeLoad: async ({ context, location }) => {
    const session = await context.queryClient.ensureQueryData(sessionQuery);
    if (session.user === null) throw redirect({ to: '/sign-in', search: { from: location.href } });
  },
  component: Shell,
});
