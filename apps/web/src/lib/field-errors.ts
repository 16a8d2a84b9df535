import { ApiProblem, type FieldError } from './api-problem.ts';

export interface FieldErrors {
  /** The error of one field, or undefined; pass it on to the field's `error`. */
  readonly errorFor: (field: string) => FieldError | undefined;
  /** Errors of fields the form does not show; `ErrorNotice` lists them. */
  readonly unplaced: readonly FieldError[];
}

/** The line, from 1, that a path names below a field of several lines ("address.lines.2" is line 3). */
function lineBelow(field: string, path: string): number | null {
  const at = path.startsWith(`${field}.`) ? path.slice(field.length + 1) : '';
  return /^\d{1,4}$/.test(at) ? Number(at) + 1 : null;
}

/** An error of a field, or of one line of it, which the message then names. */
function placed(field: string, error: FieldError): FieldError | undefined {
  if (error.field === field) return error;
  const line = lineBelow(field, error.field);
  return line === null ? undefined : { ...error, field, message: `(line ${line}) ${error.message}` };
}

/** Sorts a failed call's errors to the fields of a form. `shown`: the names of the fields the form has. */
export function fieldErrors(error: unknown, shown: readonly string[]): FieldErrors {
  const errors = error instanceof ApiProblem ? error.errors : [];
  return {
    errorFor: (field) => {
      for (const one of errors) {
        const found = placed(field, one);
        if (found !== undefined) return found;
      }
      return undefined;
    },
    unplaced: errors.filter((one) => !shown.some((field) => placed(field, one) !== undefined)),
  };
}
