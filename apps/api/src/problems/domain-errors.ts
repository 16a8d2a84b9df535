import type * as contracts from '@scantling/contracts';
import type * as costing from '@scantling/costing';
import type * as cutting from '@scantling/cutting';
import type * as cuttingSolver from '@scantling/cutting-solver';
import type * as decimals from '@scantling/decimals';
import type * as figures from '@scantling/figures';
import type * as money from '@scantling/money';
import type * as quoting from '@scantling/quoting';
import type * as renderers from '@scantling/renderers';
import type * as units from '@scantling/units';

/** The codes of all error classes a module exports. */
type CodesOf<Module> = {
  [Name in keyof Module]: Module[Name] extends abstract new (
    ...args: never[]
  ) => Error & { readonly code: infer Code extends string }
    ? Code
    : never;
}[keyof Module];

/** Read off the packages' exports, so that the problem table cannot miss one. */
export type DomainErrorCode =
  | CodesOf<typeof contracts>
  | CodesOf<typeof costing>
  | CodesOf<typeof cutting>
  | CodesOf<typeof cuttingSolver>
  | CodesOf<typeof decimals>
  | CodesOf<typeof figures>
  | CodesOf<typeof money>
  | CodesOf<typeof quoting>
  | CodesOf<typeof renderers>
  | CodesOf<typeof units>;
