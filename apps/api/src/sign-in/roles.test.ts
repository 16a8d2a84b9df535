import { ALL_CONTRACTS, addressOf, type Contract, mayCall, ROLES } from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../tests/api/application.ts';

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication();
});
afterAll(() => test.close());

// A body that no contract takes, so that a call which is let through changes nothing.
const NO_GOOD_BODY = { 'not a field of anything': true };

async function statusOf(contract: Contract, headers: Record<string, string>): Promise<number> {
  const address = addressOf(contract, contract.example.params === undefined ? {} : contract.example);
  const method = contract.method.toLowerCase();
  const send = test.app.inject({
    method: contract.method,
    url: address,
    headers,
    ...(method === 'get' ? {} : { payload: NO_GOOD_BODY }),
  });
  return (await send).statusCode;
}

const guarded = ALL_CONTRACTS.filter(({ roles }) => roles !== 'visitor');

describe('who may call what', () => {
  it.each(guarded.map((contract) => [contract.name, contract] as const))(
    '%s answers 401 to visitors, before anything is read',
    async (_, contract) => {
      expect(await statusOf(contract, {})).toBe(401);
      expect(await statusOf(contract, { authorization: 'Bearer sct_nonsense' })).toBe(401);
    },
  );

  it.each(guarded.flatMap((contract) => ROLES.map((role) => [contract.name, role, contract] as const)))(
    '%s as %s',
    async (_, role, contract) => {
      const status = await statusOf(contract, test.as(role));
      if (mayCall(role, contract.roles)) expect([401, 403, 500]).not.toContain(status);
      else expect(status).toBe(403);
    },
  );

  it('is open to visitors only where the list below says so', () => {
    const open = ALL_CONTRACTS.filter(({ roles }) => roles === 'visitor').map(({ name }) => name);
    // What a client does with the link of an offer, whose token stands in for a sign-in.
    const offers = ['accept-offer', 'decline-offer', 'get-offer-paper', 'get-offer-picture', 'read-offer'];
    const service = ['get-health', 'get-readiness', 'get-session', 'set-up-owner'];
    expect(open.sort()).toEqual([...offers, ...service].sort());
  });

  it('lets nobody but an owner see people and tokens', () => {
    const people = ALL_CONTRACTS.filter(({ tag }) => tag === 'users' || tag === 'api-tokens');
    expect(people.length).toBeGreaterThan(0);
    for (const { roles } of people) expect(roles).toEqual(['owner']);
  });

  it('lets no read-only role change anything stored', () => {
    // Work a sheet, other values on it or an unsaved draft out, and keep nothing.
    const keepsNothing = [
      'solve-cost-sheet',
      'try-cost-sheet',
      'work-out-quote-draft',
      'work-out-risk',
      'work-out-sensitivity',
      'work-out-what-if',
    ];
    const changing = guarded.filter(
      ({ name, method, path }) =>
        method !== 'GET' && !path.startsWith('/api/calculations/') && !keepsNothing.includes(name),
    );
    expect(changing.filter(({ roles }) => mayCall('read-only', roles)).map(({ name }) => name)).toEqual([]);
  });
});
