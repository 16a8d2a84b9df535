import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { addressOf, PathParameterMissingError } from './address.ts';
import { changeRole, defineContract, listUsers } from './index.ts';
import { ALL_CONTRACTS } from './registry.ts';

describe('every contract', () => {
  it('has a name and an address of its own', () => {
    const names = ALL_CONTRACTS.map(({ name }) => name);
    const addresses = ALL_CONTRACTS.map(({ method, path }) => `${method} ${path.replace(/:\w+/g, ':')}`);
    expect(new Set(names).size).toBe(names.length);
    expect(new Set(addresses).size).toBe(addresses.length);
  });

  it.each(ALL_CONTRACTS.map((contract) => [contract.name, contract] as const))(
    '%s has an example that its schemas take',
    (_, { params, query, body, answer, example, givesFile, takesFile }) => {
      expect(params.safeParse(example.params ?? {}).error).toBeUndefined();
      expect(query.safeParse(example.query ?? {}).error).toBeUndefined();
      if (!takesFile) expect(body.safeParse(example.body).error).toBeUndefined();
      if (givesFile.length === 0) expect(answer.safeParse(example.answer).error).toBeUndefined();
    },
  );

  it.each(ALL_CONTRACTS.map((contract) => [contract.name, contract] as const))(
    '%s names its path parameters',
    (_, { path, params }) => {
      const inPath = [...path.matchAll(/:(\w+)/g)].map((match) => match[1]);
      const declared = params instanceof z.ZodObject ? Object.keys(params.shape) : [];
      expect(declared.sort()).toEqual(inPath.sort());
    },
  );
});

describe('the address of a route', () => {
  it('escapes what is filled in and leaves out what is undefined', () => {
    expect(addressOf(changeRole, { params: { id: 'a/b c' } })).toBe('/api/users/a%2Fb%20c/role');
    expect(addressOf(listUsers, { query: { cursor: undefined, limit: 5 } })).toBe('/api/users?limit=5');
  });

  it('refuses to leave a hole', () => {
    expect(() => addressOf(changeRole)).toThrow(PathParameterMissingError);
  });
});

describe('a contract without an answer', () => {
  it('answers 204', () => {
    const contract = defineContract({
      name: 'x',
      method: 'DELETE',
      path: '/api/x',
      summary: '',
      description: '',
      tag: 'x',
      roles: 'anyone',
      example: {},
    });
    expect([contract.status, contract.isIdempotent]).toEqual([204, false]);
  });
});
