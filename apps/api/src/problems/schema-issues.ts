import { type FieldProblem, issueWords } from '@scantling/contracts';
import type { z } from 'zod';

type Issue = z.core.$ZodIssue;

/** Where in a request a schema was applied. */
export type Place = 'body' | 'query' | 'path';

function fieldOf(place: Place, path: readonly PropertyKey[]): string {
  const dotted = path.map(String).join('.');
  if (place === 'body') return dotted === '' ? 'body' : dotted;
  return dotted === '' ? place : `${place}.${dotted}`;
}

/** The value a path leads to, undefined where it leads nowhere. */
function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inner, key) => (typeof inner === 'object' && inner !== null ? Reflect.get(inner, key) : undefined),
    value,
  );
}

/** Of the ways a value may be written, the issues of the one that was meant: where the value is of its kind at all. */
function opened(issue: Issue): Issue[] {
  if (issue.code !== 'invalid_union') return [issue];
  const meant = issue.errors.find(
    (inner) => !inner.some(({ code, path }) => code === 'invalid_type' && path.length === 0),
  );
  const chosen = meant ?? issue.errors[0] ?? [];
  return chosen.flatMap((inner) => opened({ ...inner, path: [...issue.path, ...inner.path] }));
}

/** The issues of a failed parse as fields, each with what to do about it. */
export function fieldProblemsOf(error: z.core.$ZodError, given: unknown, place: Place): FieldProblem[] {
  return error.issues.flatMap(opened).flatMap((issue): FieldProblem[] => {
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({
        field: fieldOf(place, [...issue.path, key]),
        message: 'is not known here',
        mend: 'Leave it out, or correct its name.',
      }));
    const isMissing = valueAt(given, issue.path) === undefined;
    return [{ field: fieldOf(place, issue.path), ...issueWords(issue, isMissing) }];
  });
}
