import type { z } from 'zod';

type Issue = z.core.$ZodIssue;

interface Worded {
  readonly message: string;
  readonly mend: string;
}

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

const COUNTED: Readonly<Record<string, readonly [one: string, many: string]>> = {
  string: ['character', 'characters'],
  array: ['entry', 'entries'],
};

interface Bound {
  readonly origin: string;
  readonly inclusive?: boolean | undefined;
}

function bound(issue: Bound, limit: number | bigint, words: readonly [inclusive: string, exclusive: string]) {
  const [one, many] = COUNTED[issue.origin] ?? ['', ''];
  const word = words[issue.inclusive === false ? 1 : 0];
  return `Give ${word} ${limit} ${Number(limit) === 1 ? one : many}`.trim().concat('.');
}

function tooSmall(issue: Bound & { readonly minimum: number | bigint }): Worded {
  const isCounted = COUNTED[issue.origin] !== undefined;
  if (isCounted && Number(issue.minimum) === 1) return { message: 'is empty', mend: 'Fill it in.' };
  return {
    message: issue.origin === 'string' ? 'is too short' : isCounted ? 'has too few entries' : 'is too small',
    mend: bound(issue, issue.minimum, ['at least', 'more than']),
  };
}

function tooBig(issue: Bound & { readonly maximum: number | bigint }): Worded {
  const isCounted = COUNTED[issue.origin] !== undefined;
  return {
    message: issue.origin === 'string' ? 'is too long' : isCounted ? 'has too many entries' : 'is too large',
    mend: bound(issue, issue.maximum, ['at most', 'less than']),
  };
}

/**
 * What is wrong and what to write instead, in words of ours that follow the name of the field; the library's own stand
 * in where it knows better.
 */
export function issueWords(issue: Issue, isMissing: boolean): Worded {
  switch (issue.code) {
    case 'invalid_type': {
      const wanted = WANTED[issue.expected] ?? issue.expected;
      return isMissing
        ? { message: 'is missing', mend: `Give ${wanted}.` }
        : { message: `is not ${wanted}`, mend: `Give ${wanted}.` };
    }
    case 'too_small':
      return tooSmall(issue);
    case 'too_big':
      return tooBig(issue);
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
