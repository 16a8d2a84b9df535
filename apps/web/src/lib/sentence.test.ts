import { expect, it } from 'vitest';
import { sentence } from './sentence.ts';

it('puts the field before what is said of it', () => {
  expect(sentence('Password', 'is too short')).toBe('Password is too short.');
});

it('leaves whole sentences alone', () => {
  expect(sentence('Price', '"7,8O" is not a number.')).toBe('"7,8O" is not a number.');
});
