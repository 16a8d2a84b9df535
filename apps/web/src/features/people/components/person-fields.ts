import type { BodyOf, createPerson, PersonRecord } from '@scantling/contracts';
import type { Choice } from '../../../components/choice-list.tsx';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { plainDecimal } from '../../../lib/percent.ts';

export function personGroups(grades: readonly Choice[]): readonly GroupSpec[] {
  return [
    {
      fields: [
        { name: 'name', label: 'Name', kind: 'text', isRequired: true },
        {
          name: 'gradeId',
          label: 'Labour grade',
          kind: 'choice',
          choices: grades,
          isRequired: true,
          hint: 'Pay and burden come from the grade',
        },
        { name: 'paidHoursPerYear', label: 'Paid hours', kind: 'decimal', suffix: 'h a year' },
      ],
    },
  ];
}

export function personValues(person: PersonRecord | null): FormValues {
  return {
    name: person?.name ?? '',
    gradeId: person?.gradeId ?? '',
    paidHoursPerYear: person?.paidHoursPerYear ?? '',
  };
}

export function personInput(values: FormValues): BodyOf<typeof createPerson> {
  return {
    name: textOf(values, 'name'),
    gradeId: textOf(values, 'gradeId'),
    paidHoursPerYear: plainDecimal(textOf(values, 'paidHoursPerYear')),
  };
}
