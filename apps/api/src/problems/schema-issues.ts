import type { FieldProblem } from '@scantling/contracts';
import type { z } from 'zod';

/** Where in a request a schema was applied. */
export type Place = 'body' | 'query' | 'path';

type Issue = z.core.$ZodIssue;

const WANTED: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a record',
  record: 'a record',
  null: 'null',
  undefined: 'nothing',
};

function fieldOf(place: Place, path: readonly PropertyKey[]): string {
  const dotted = path.map(String).join('.');
  if (place === 'body') return dotted === '' ? 'body' : dotted;
  return dotted === '' ? place : `${place}.${dotted}`;
}

function bound(issue: { origin: string }, limit: number | bigint, word: string): string {
  if (issue.origin === 'string') return `${word} ${limit} characters`;
  return issue.origin === 'array' ? `${word} ${limit} entries` : `${word} ${limit}`;
}

/** What is wrong and what to write instead, in words of ours; the library's own stand in where it knows better. */
function worded(issue: Issue, isMissing: boolean): { message: string; mend: string } {
  switch (issue.code) {
    case 'invalid_type': {
      const wanted = WANTED[issue.expected] ?? issue.expected;
      return isMissing
        ? { message: 'is missing', mend: `Give ${wanted}.` }
        : { message: `is not ${wanted}`, mend: `Give ${wanted}.` };
    }
    case 'too_small': {
      const wanted = bound(issue, issue.minimum, issue.inclusive === false ? 'more than' : 'at least');
      return { message: 'is too small or too short', mend: `Give ${wanted}.` };
    }
    case 'too_big': {
      const wanted = bound(issue, issue.maximum, issue.inclusive === false ? 'less than' : 'at most');
      return { message: 'is too large or too long', mend: `Give ${wanted}.` };
    }
    case 'invalid_value': {
      const wanted = issue.values.map((value) => JSON.stringify(value)).join(', ');
      return {
        message: isMissing ? 'is missing' : 'is not one of the choices',
        mend: `Give one of ${wanted}.`,
      };
    }
    case 'invalid_format':
      return { message: `is not a valid ${issue.format}`, mend: `Write it as ${issue.format}.` };
    case 'custom': {
      const mend: unknown = issue.params?.mend;
      return { message: issue.message, mend: typeof mend === 'string' ? mend : 'Correct it.' };
    }
    default:
      return { message: issue.message, mend: 'Correct it as the API description shows.' };
  }
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
    return [{ field: fieldOf(place, issue.path), ...worded(issue, isMissing) }];
  });
}
