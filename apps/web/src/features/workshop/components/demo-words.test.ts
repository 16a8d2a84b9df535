import { expect, test } from 'vitest';
import { countsInWords } from './demo-words.ts';

test('counts are named in the singular and the plural, and none is left out', () => {
  expect(countsInWords({ designs: 12, tools: 1, clients: 0 })).toBe('12 designs, 1 tool');
});

test('no counts at all are nothing', () => {
  expect(countsInWords({ designs: 0 })).toBe('nothing');
  expect(countsInWords({})).toBe('nothing');
});
