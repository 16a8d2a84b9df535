import { ApiProblem, type FieldError } from '../../../lib/api-problem.ts';

const ROOT_FIELDS = [
  'title',
  'clientId',
  'intro',
  'terms',
  'pictures',
  'validDays',
  'promisedOn',
  'schedule',
];
const WITHIN = /^(?:lines|schedule|taxes)\.\d+\.|^discount\./;

function errorsOf(error: Error | null): readonly FieldError[] {
  if (!(error instanceof ApiProblem)) return [];
  // Saving names fields below "draft.", working out names them as the draft does.
  return error.errors.map((one) => ({ ...one, field: one.field.replace(/^draft\./, '') }));
}

/** What is to mend, by the draft's own field names: found here, when saving, or when working out. */
export function draftErrors(found: readonly FieldError[], saving: Error | null, working: Error | null) {
  const all = [...found, ...errorsOf(saving), ...errorsOf(working)];
  return {
    errorFor: (field: string): FieldError | undefined => all.find((one) => one.field === field),
    /** What no field shows. */
    unplaced: all.filter(({ field }) => !ROOT_FIELDS.includes(field) && !WITHIN.test(field)),
    fields: all.map(({ field }) => field),
  };
}
