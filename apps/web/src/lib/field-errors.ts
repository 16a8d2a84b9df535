import { ApiProblem, type FieldError } from './api-problem.ts';

export interface FieldErrors {
  /** The error of one field, or undefined; pass it on to the field's `error`. */
  readonly errorFor: (field: string) => FieldError | undefined;
  /** Errors of fields the form does not show; `ErrorNotice` lists them. */
  readonly unplaced: readonly FieldError[];
}

/** Sorts a failed call's errors to the fields of a form. `shown`: the names of the fields the form has. */
export function fieldErrors(error: unknown, shown: readonly string[]): FieldErrors {
  const errors = error instanceof ApiProblem ? error.errors : [];
  return {
    errorFor: (field) => errors.find((one) => one.field === field),
    unplaced: errors.filter((one) => !shown.includes(one.field)),
  };
}
