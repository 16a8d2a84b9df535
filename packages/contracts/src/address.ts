import type { Contract, ParamsOf, QueryOf } from './contract.ts';

/** Thrown when a path parameter of a contract got no value. */
export class PathParameterMissingError extends Error {
  readonly code = 'path-parameter-missing';
  constructor(readonly parameter: string) {
    super(`the path needs "${parameter}"`);
    this.name = 'PathParameterMissingError';
  }
}

function fieldsOf(value: unknown): [string, unknown][] {
  return typeof value === 'object' && value !== null ? Object.entries(value) : [];
}

/**
 * The address of a route with its path parameters and query filled in, for callers.
 * Query values that are undefined are left out.
 * @throws PathParameterMissingError
 */
export function addressOf<C extends Contract>(
  contract: C,
  parts: { params?: ParamsOf<C>; query?: QueryOf<C> } = {},
): string {
  const params = new Map(fieldsOf(parts.params));
  const path = contract.path.replace(/:(\w+)/g, (_, name: string) => {
    const value = params.get(name);
    if (value === undefined) throw new PathParameterMissingError(name);
    return encodeURIComponent(String(value));
  });
  const query = fieldsOf(parts.query)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `${encodeURIComponent(name)}=${encodeURIComponent(String(value))}`);
  return query.length === 0 ? path : `${path}?${query.join('&')}`;
}
