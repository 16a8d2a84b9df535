import { describe, expect, it } from 'vitest';
import { problemFrom } from '../../../lib/api-problem.ts';
import { costingProblem, placeOf } from './costing-problem.ts';

describe('what keeps a sheet from being worked out', () => {
  it('is placed in words, rows counted from 1', () => {
    expect(placeOf('bill.parts.0.material')).toBe('Bill of materials, part 1, material');
    expect(placeOf('bill.operations.3')).toBe('Bill of materials, operation 4');
    expect(placeOf('terms.discount')).toBe('terms.discount');
  });

  it('keeps message and mend and drops the detail that says them again', () => {
    const given = { message: 'cannot be priced', mend: 'import a price for it' };
    const problem = problemFrom(422, {
      title: 'A value cannot be used',
      detail: 'bill.parts.0.material cannot be priced: import a price for it',
      code: 'costing-input',
      errors: [{ field: 'bill.parts.0.material', ...given }],
    });
    const shown = costingProblem(problem);
    expect(shown.errors).toEqual([{ field: 'Bill of materials, part 1, material', ...given }]);
    expect(shown).toMatchObject({ status: 422, detail: null, code: 'costing-input' });
  });

  it('stays as it is where no field is to blame', () => {
    const problem = problemFrom(503, { title: 'The server is not ready' });
    expect(costingProblem(problem)).toBe(problem);
  });
});
