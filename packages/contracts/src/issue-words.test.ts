import { expect, it } from 'vitest';
import { z } from 'zod';
import { issueWords } from './issue-words.ts';

function wordsFor(schema: z.ZodType, given: unknown): string[] {
  const read = schema.safeParse(given);
  return (read.error?.issues ?? []).map((issue) => {
    const { message, mend } = issueWords(issue, given === undefined);
    return `${message}: ${mend}`;
  });
}

it('says of an empty field that it is empty', () => {
  expect(wordsFor(z.string().min(1), '')).toEqual(['is empty: Fill it in.']);
  expect(wordsFor(z.array(z.string()).min(1), [])).toEqual(['is empty: Fill it in.']);
});

it('counts one and many as people do', () => {
  expect(wordsFor(z.string().min(10), 'short')).toEqual(['is too short: Give at least 10 characters.']);
  expect(wordsFor(z.string().max(1), 'ab')).toEqual(['is too long: Give at most 1 character.']);
  expect(wordsFor(z.array(z.number()).max(2), [1, 2, 3])).toEqual([
    'has too many entries: Give at most 2 entries.',
  ]);
});

it('names the bound of a number, whether it belongs to it or not', () => {
  expect(wordsFor(z.number().min(1), 0)).toEqual(['is too small: Give at least 1.']);
  expect(wordsFor(z.number().gt(0), 0)).toEqual(['is too small: Give more than 0.']);
  expect(wordsFor(z.number().lt(9), 9)).toEqual(['is too large: Give less than 9.']);
});

it('tells what is missing from what is of another kind', () => {
  expect(wordsFor(z.string(), undefined)).toEqual(['is missing: Give text.']);
  expect(wordsFor(z.number(), 'two')).toEqual(['is not a number: Give a number.']);
  expect(wordsFor(z.enum(['a', 'b']), 'c')).toEqual(['is not one of the choices: Give one of "a", "b".']);
});
