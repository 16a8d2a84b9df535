import type { Comparison } from '../api/compare-cost-sheets.ts';

const NAMES = ['with', 'onDate', 'basis', 'variant', 'asDrawn', 'revision', 'pieces'] as const;

/** What an address says of a comparison; the server names what it cannot take. */
export function comparisonIn(search: Readonly<Record<string, unknown>>): Comparison {
  const given = NAMES.flatMap((name) => {
    const value = search[name];
    return value === undefined || value === null || value === '' ? [] : [[name, String(value)] as const];
  });
  return Object.fromEntries(given) as Comparison;
}
