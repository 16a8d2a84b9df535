import { CURRENCIES } from '@scantling/money';
import type { Choice } from '../../../components/choice-list.tsx';
import {
  type FormValues,
  type GroupSpec,
  isTicked,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { fromPercent } from '../../../lib/percent.ts';
import type { ListTerms } from '../api/price-import-calls.ts';

const CURRENCY_CHOICES = CURRENCIES.map((code) => ({ id: code, label: code }));
const TAX_CHOICES = [
  { id: 'supplier', label: 'As the supplier says' },
  { id: 'true', label: 'Prices include tax' },
  { id: 'false', label: 'Prices are without tax' },
];
const differs = (values: FormValues): boolean => isTicked(values, 'differs');

export function termsGroups(suppliers: readonly Choice[]): readonly GroupSpec[] {
  return [
    {
      legend: 'The list',
      fields: [
        { name: 'supplierId', label: 'Supplier', kind: 'search', choices: suppliers, isRequired: true },
        { name: 'validFrom', label: 'Prices hold from', kind: 'date', isRequired: true },
        { name: 'validTo', label: 'Last day, if any', kind: 'date' },
        { name: 'name', label: 'Name', kind: 'text', hint: "Empty: the file's name" },
        {
          name: 'isComplete',
          label: 'The list is complete',
          kind: 'check',
          hint: 'What it does not name has ended',
        },
        { name: 'differs', label: "Its terms differ from the supplier's", kind: 'check' },
        { name: 'currency', label: 'Currency', kind: 'search', choices: CURRENCY_CHOICES, isShown: differs },
        { name: 'taxIncluded', label: 'Tax', kind: 'choice', choices: TAX_CHOICES, isShown: differs },
        { name: 'taxRate', label: 'Tax on purchases', kind: 'decimal', suffix: '%', isShown: differs },
        {
          name: 'taxRecoverable',
          label: 'Of that, got back',
          kind: 'decimal',
          suffix: '%',
          isShown: differs,
        },
      ],
    },
  ];
}

export function freshTerms(supplierId: string, today: string): FormValues {
  return { supplierId, validFrom: today, isComplete: false, differs: false, taxIncluded: 'supplier' };
}

/** Only what was said: the rest is the supplier's. */
export function termsOf(values: FormValues): ListTerms {
  const tax = textOf(values, 'taxIncluded');
  const said = (name: string, write: (text: string) => string = (text) => text) => {
    const text = textOf(values, name);
    return text === '' ? {} : { [name]: write(text) };
  };
  return {
    supplierId: textOf(values, 'supplierId'),
    validFrom: textOf(values, 'validFrom'),
    isComplete: isTicked(values, 'isComplete'),
    ...said('validTo'),
    ...said('name'),
    ...(differs(values)
      ? {
          ...said('currency'),
          ...said('taxRate', fromPercent),
          ...said('taxRecoverable', fromPercent),
          ...(tax === 'supplier' ? {} : { taxIncluded: tax === 'true' }),
        }
      : {}),
  };
}
