import { MutationCache, QueryCache, QueryClient } from '@tanstack/react-query';
import { ApiProblem } from '../lib/api-problem.ts';

const MOST_RETRIES = 2;

/** Refusals stay refusals; only a server that failed or was not reached is asked again. */
function isWorthAnotherTry(failures: number, error: Error): boolean {
  const isRefusal = error instanceof ApiProblem && error.status >= 200 && error.status < 500;
  return !isRefusal && failures < MOST_RETRIES;
}

/** `onSignedOut` runs when any call finds that the session has ended. */
export function createQueryClient(onSignedOut: () => void): QueryClient {
  const onError = (error: Error): void => {
    if (error instanceof ApiProblem && error.status === 401 && error.code === 'not-signed-in') onSignedOut();
  };
  return new QueryClient({
    queryCache: new QueryCache({ onError }),
    mutationCache: new MutationCache({ onError }),
    defaultOptions: {
      queries: { retry: isWorthAnotherTry, staleTime: 10_000 },
      mutations: { retry: false },
    },
  });
}
