import type { BodyOf, createLabourGrade, LabourGradeRecord } from '@scantling/contracts';
import {
  type FormValues,
  type GroupSpec,
  isTicked,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { fromPercent, plainDecimal, toPercent } from '../../../lib/percent.ts';

export function labourGradeGroups(currency: string): readonly GroupSpec[] {
  return [
    {
      fields: [
        { name: 'name', label: 'Name', kind: 'text', isRequired: true },
        {
          name: 'code',
          label: 'Code',
          kind: 'text',
          isRequired: true,
          hint: 'Operations name the grade by it',
        },
        {
          name: 'payPerHour',
          label: 'Pay for a paid hour',
          kind: 'decimal',
          suffix: currency,
          hint: 'For the owner: what an hour of theirs is held to be worth',
        },
        {
          name: 'burden',
          label: 'Burden',
          kind: 'decimal',
          suffix: '%',
          hint: 'On top of pay: social contributions, paid leave, insurance',
        },
        {
          name: 'productiveShare',
          label: 'Productive share',
          kind: 'decimal',
          suffix: '%',
          hint: 'Hours on jobs over hours paid',
        },
        { name: 'isOwner', label: 'These are hours of the owner', kind: 'check' },
      ],
    },
  ];
}

/** A new grade starts with shares that are common practice, no source. */
export function labourGradeValues(grade: LabourGradeRecord | null): FormValues {
  return {
    name: grade?.name ?? '',
    code: grade?.code ?? '',
    payPerHour: grade?.payPerHour ?? '',
    burden: toPercent(grade?.burden ?? '0.25'),
    productiveShare: toPercent(grade?.productiveShare ?? '0.75'),
    isOwner: grade?.isOwner ?? false,
  };
}

export function labourGradeInput(values: FormValues): BodyOf<typeof createLabourGrade> {
  return {
    name: textOf(values, 'name'),
    code: textOf(values, 'code'),
    payPerHour: plainDecimal(textOf(values, 'payPerHour')),
    burden: fromPercent(textOf(values, 'burden')),
    productiveShare: fromPercent(textOf(values, 'productiveShare')),
    isOwner: isTicked(values, 'isOwner'),
  };
}
