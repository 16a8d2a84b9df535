import type { QueryClient } from '@tanstack/react-query';
import {
  createRootRouteWithContext,
  type ErrorComponentProps,
  Link,
  Outlet,
  useRouter,
} from '@tanstack/react-router';
import { ErrorNotice } from '../components/notices.tsx';
import { Sheet, SheetHeader } from '../components/sheet.tsx';
import { Toasts } from '../components/toast.tsx';

interface RouterContext {
  readonly queryClient: QueryClient;
}

/** What every address may carry: the figure whose working is open. */
export interface RootSearch {
  readonly figure?: string | undefined;
}

function Failed({ error }: ErrorComponentProps) {
  const router = useRouter();
  return (
    <main className="page">
      <ErrorNotice error={error} retry={() => void router.invalidate()} />
    </main>
  );
}

function NotFound() {
  return (
    <main className="page">
      <Sheet>
        <SheetHeader title="There is no such sheet" />
        <p>
          The address may be mistyped, or what it named is gone. <Link to="/">To the bench</Link>
        </p>
      </Sheet>
    </main>
  );
}

export const rootRoute = createRootRouteWithContext<RouterContext>()({
  validateSearch: (search: Record<string, unknown>): RootSearch =>
    // Ids are texts, but an address like ?figure=12 is read as a number.
    search.figure === undefined ? {} : { figure: String(search.figure) },
  component: () => (
    <>
      <Outlet />
      <Toasts />
    </>
  ),
  errorComponent: Failed,
  notFoundComponent: NotFound,
});
