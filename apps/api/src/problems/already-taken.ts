import { RequestProblem } from './request-problem.ts';

/** A code or name that another record has already. */
export function alreadyTaken(field: string, value: string): RequestProblem {
  return new RequestProblem('already-exists', {
    errors: [{ field, message: `"${value}" belongs to another record already`, mend: 'Choose another.' }],
  });
}
