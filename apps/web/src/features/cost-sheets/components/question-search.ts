/** What an address says of a question to a cost sheet; all of it text, so that the server names what it cannot take. */
function textsIn<Name extends string>(
  search: Readonly<Record<string, unknown>>,
  names: readonly Name[],
): { readonly [K in Name]?: string } {
  const given = names.flatMap((name) => {
    const value = search[name];
    return value === undefined || value === null || value === '' ? [] : [[name, String(value)] as const];
  });
  return Object.fromEntries(given) as { readonly [K in Name]?: string };
}

/** Which result, at how many pieces; by how many percent, whether ranges of their own hold, how many rows. */
export type SensitivitySearch = {
  readonly [K in 'result' | 'pieces' | 'move' | 'ranges' | 'rows']?: string;
};

export function sensitivityIn(search: Readonly<Record<string, unknown>>): SensitivitySearch {
  return textsIn(search, ['result', 'pieces', 'move', 'ranges', 'rows']);
}

/** Which input, for which result to come to what, and where to look. */
export type SolveSearch = {
  readonly [K in 'result' | 'pieces' | 'input' | 'target' | 'low' | 'high']?: string;
};

export function solveIn(search: Readonly<Record<string, unknown>>): SolveSearch {
  return textsIn(search, ['result', 'pieces', 'input', 'target', 'low', 'high']);
}

/** The search with some of it changed; undefined takes a name out of the address. */
export function withSearch<Search extends object>(
  search: Search,
  changes: { readonly [K in keyof Search]?: Search[K] | undefined },
): Search {
  const next = Object.entries({ ...search, ...changes }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(next) as Search;
}
