import { type ApiProblem, type FieldError, problemFrom } from '../../../lib/api-problem.ts';

const KINDS: Readonly<Record<string, string>> = {
  assemblies: 'assembly',
  parts: 'part',
  components: 'component',
  finishes: 'finish step',
  consumables: 'consumable',
  operations: 'operation',
};

/** "bill.parts.0.material" as "Bill of materials, part 1, material"; other fields stay as they are. */
export function placeOf(field: string): string {
  const [bill, kind = '', at, ...rest] = field.split('.');
  const word = KINDS[kind];
  if (bill !== 'bill' || word === undefined) return field;
  const row = at === undefined ? word : `${word} ${Number(at) + 1}`;
  return ['Bill of materials', row, ...rest].join(', ');
}

/** Why a sheet has no figures, with the places in words; the list says it all, so the detail is left out. */
export function costingProblem(problem: ApiProblem): ApiProblem {
  if (problem.errors.length === 0) return problem;
  const { status, type, instance, code } = problem;
  const errors: FieldError[] = problem.errors.map((one) => ({ ...one, field: placeOf(one.field) }));
  return problemFrom(status, {
    title: 'It cannot be worked out yet',
    type,
    code: code ?? undefined,
    instance: instance ?? undefined,
    errors,
  });
}
