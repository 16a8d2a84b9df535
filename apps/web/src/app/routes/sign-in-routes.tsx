import { createRoute, redirect, useRouter } from '@tanstack/react-router';
import { sessionQuery } from '../../features/sign-in/api/get-session.ts';
import { SetUpScreen } from '../../features/sign-in/screens/set-up-screen.tsx';
import { SignInScreen } from '../../features/sign-in/screens/sign-in-screen.tsx';
import { rootRoute } from '../root-route.tsx';

/** Only an address of our own: a sign-in link must not lead elsewhere. */
function ownAddress(from: unknown): string {
  return typeof from === 'string' && /^\/(?![/\\])/.test(from) ? from : '/';
}

export const signInRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/sign-in',
  validateSearch: (search: Record<string, unknown>): { from?: string } =>
    search.from === undefined ? {} : { from: ownAddress(search.from) },
  beforeLoad: async ({ context, search }) => {
    const session = await context.queryClient.ensureQueryData(sessionQuery);
    if (session.user !== null) throw redirect({ href: ownAddress(search.from) });
  },
  component: function SignIn() {
    const router = useRouter();
    const { from } = signInRoute.useSearch();
    return <SignInScreen onSignedIn={() => router.history.push(ownAddress(from))} />;
  },
});

export const setUpRoute = createRoute({
  getParentRoute: () => rootRoute,
  path: '/set-up',
  component: function SetUp() {
    const router = useRouter();
    // The token stands after the hash sign, so that no server and no log ever sees it.
    const { hash } = setUpRoute.useMatch({ select: () => ({ hash: router.state.location.hash }) });
    return <SetUpScreen linkToken={hash} onSignedIn={() => router.history.push('/')} />;
  },
});
