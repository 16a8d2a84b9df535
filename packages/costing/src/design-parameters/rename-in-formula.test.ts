import { expect, it } from 'vitest';
import { renameInFormula } from './rename-in-formula.ts';

it.each([
  ['length - 2 * leg', 'overall - 2 * leg'],
  ['length+length/2', 'overall+overall/2'],
  ['lengthways + my_length + length2', 'lengthways + my_length + length2'],
  ['ceil(length, 50)', 'ceil(overall, 50)'],
  ['drawers > 4 ? length : mm(500)', 'drawers > 4 ? overall : mm(500)'],
  ['length -', 'overall -'],
])('%s becomes %s', (formula, renamed) => {
  expect(renameInFormula(formula, new Map([['length', 'overall']]))).toBe(renamed);
});

it('takes no part of a number for a name', () => {
  expect(renameInFormula('2e5 + e5', new Map([['e5', 'depth']]))).toBe('2e5 + depth');
});

it('lets two change names with each other', () => {
  const names = new Map([
    ['width', 'depth'],
    ['depth', 'width'],
  ]);
  expect(renameInFormula('width - 2 * depth', names)).toBe('depth - 2 * width');
});
