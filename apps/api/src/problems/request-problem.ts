import type { FieldProblem } from '@scantling/contracts';
import { PROBLEM_TABLE, type ProblemCode } from './problem-table.ts';

/** Thrown by the API's own code; the table gives status and title. */
export class RequestProblem extends Error {
  override readonly name = 'RequestProblem';
  readonly code: ProblemCode;
  readonly errors: readonly FieldProblem[];
  readonly headers: Readonly<Record<string, string>>;

  constructor(
    code: ProblemCode,
    options: {
      /** In words; the table's title and mend where nothing is said. */
      detail?: string;
      errors?: readonly FieldProblem[];
      headers?: Readonly<Record<string, string>>;
      cause?: unknown;
    } = {},
  ) {
    const row = PROBLEM_TABLE[code];
    super(
      options.detail ?? `${row.title}. ${row.mend}`,
      options.cause === undefined ? undefined : { cause: options.cause },
    );
    this.code = code;
    this.errors = options.errors ?? [];
    this.headers = options.headers ?? {};
  }
}

/** A record that is not there ("There is no supplier with this id."). */
export function notFound(what: string): RequestProblem {
  return new RequestProblem('not-found', { detail: `There is no ${what} with this id.` });
}

/** One field of a good-looking request that cannot be used. */
export function fieldProblem(field: string, message: string, mend: string): RequestProblem {
  return new RequestProblem('input-invalid', { errors: [{ field, message, mend }] });
}
