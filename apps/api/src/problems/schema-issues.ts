import { type FieldProblem, issueWords } from '@scantling/contracts';
import type { z } from 'zod';

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

/** The issues of a failed parse as fields, each with what to do about it. */
export function fieldProblemsOf(error: z.core.$ZodError, given: unknown, place: Place): FieldProblem[] {
  return error.issues.flatMap((issue): FieldProblem[] => {
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
