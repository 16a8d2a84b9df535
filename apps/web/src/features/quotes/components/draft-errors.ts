import { ApiProblem, type FieldError } from '../../../lib/api-problem.ts';
import { type LineErrors, lineErrors, placedAtLines } from './line-problems.ts';

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

/** What the server refused, and the lines it was asked about. */
interface Refused {
  readonly error: Error | null;
  readonly lines: readonly { readonly id: string }[];
}

function errorsOf({ error }: Refused): readonly FieldError[] {
  if (!(error instanceof ApiProblem)) return [];
  // Saving names fields below "draft.", working out names them as the draft does.
  return error.errors.map((one) => ({ ...one, field: one.field.replace(/^draft\./, '') }));
}

interface Found {
  readonly lines: LineErrors;
  readonly fields: readonly FieldError[];
}

/** What is to mend, by the draft's own field names and the lines' cells: found here, when saving, or when working out. */
export function draftErrors(found: Found, saving: Refused, working: Refused) {
  const [saved, worked] = [errorsOf(saving), errorsOf(working)];
  const all = [...found.fields, ...saved, ...worked];
  const ofLines = lineErrors([
    ...[...found.lines].flatMap(([line, cells]) =>
      [...cells].map(([name, message]) => [line, name, message] as const),
    ),
    ...placedAtLines(saved, saving.lines),
    ...placedAtLines(worked, working.lines),
  ]);
  return {
    errorFor: (field: string): FieldError | undefined => all.find((one) => one.field === field),
    lines: ofLines,
    /** What no field shows. */
    unplaced: all.filter(({ field }) => !ROOT_FIELDS.includes(field) && !WITHIN.test(field)),
  };
}
