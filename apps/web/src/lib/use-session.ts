import { type Contract, getSession, mayCall } from '@scantling/contracts';
import type { Currency } from '@scantling/money';
import type { LengthSystem } from '@scantling/units';
import { useQuery } from '@tanstack/react-query';
import { callApi } from './api-client.ts';

function useSession() {
  // The key the gate uses, so that both share one answer.
  return useQuery({
    queryKey: ['sign-in', 'session'],
    queryFn: async ({ signal }) => (await callApi(getSession, { signal })).value,
    staleTime: 300_000,
  }).data;
}

/** Whether whoever is signed in may call the route; acts that would be refused are not offered. */
export function useMayCall(contract: Pick<Contract, 'roles'>): boolean {
  const user = useSession()?.user;
  return user ? mayCall(user.role, contract.roles) : false;
}

/** The currency the workshop reckons in, or '' before the session is known. */
export function useCurrency(): Currency | '' {
  return useSession()?.workshop?.currency ?? '';
}

/** How the workshop reads lengths where a design does not say; metric before the session is known. */
export function useLengthSystem(): LengthSystem {
  return useSession()?.workshop?.unitSystem ?? 'metric';
}
