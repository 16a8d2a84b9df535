import { describe, expect, it } from 'vitest';
import { ApiProblem } from './api-problem.ts';
import { fieldErrors } from './field-errors.ts';
import { sentence } from './sentence.ts';

function refused(...fields: string[]): ApiProblem {
  return new ApiProblem({
    status: 422,
    title: 'Not accepted',
    type: 'about:blank',
    detail: null,
    instance: null,
    code: null,
    errors: fields.map((field) => ({ field, message: 'is too long' })),
  });
}

describe('the errors of a form', () => {
  it('stand at their fields, and the rest above the form', () => {
    const { errorFor, unplaced } = fieldErrors(refused('name', 'terms.days'), ['name', 'terms']);
    expect(errorFor('name')?.message).toBe('is too long');
    expect(errorFor('terms')).toBeUndefined();
    expect(unplaced.map(({ field }) => field)).toEqual(['terms.days']);
  });

  it('of one line of an address stand at the address and name the line', () => {
    const { errorFor, unplaced } = fieldErrors(refused('address.lines.2'), ['address.lines', 'name']);
    expect(sentence('Address', errorFor('address.lines')?.message ?? '')).toBe(
      'Address (line 3) is too long.',
    );
    expect(unplaced).toEqual([]);
  });

  it('of a cell in a list of rows stay with that cell', () => {
    const { errorFor } = fieldErrors(refused('cutters.0.name'), ['cutters.0.name']);
    expect(errorFor('cutters')).toBeUndefined();
    expect(errorFor('cutters.0.name')?.message).toBe('is too long');
  });
});
