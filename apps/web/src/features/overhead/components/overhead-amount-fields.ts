import {
  type BodyOf,
  type createOverheadAmount,
  type OverheadAmountRecord,
  RECOVERIES,
} from '@scantling/contracts';
import { HOMES } from '@scantling/costing';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { plainDecimal } from '../../../lib/percent.ts';
import { HOME_WORDS, RECOVERY_WORDS } from './overhead-words.ts';

const BY_NO_RATE = 'none';
const isRateHome = (values: FormValues) => textOf(values, 'home').endsWith('-rate');

export function overheadAmountGroups(currency: string, values: FormValues): readonly GroupSpec[] {
  const byRates = RECOVERIES.map((id) => ({ id, label: RECOVERY_WORDS[id] }));
  return [
    {
      fields: [
        { name: 'name', label: 'Name', kind: 'text', isRequired: true },
        { name: 'yearlyAmount', label: 'Amount', kind: 'decimal', suffix: `${currency} a year` },
        {
          name: 'home',
          label: 'Its one home',
          kind: 'choice',
          choices: HOMES.map((id) => ({ id, label: HOME_WORDS[id] })),
          hint: 'Where it is recovered',
        },
        {
          name: 'recoveredAs',
          label: isRateHome(values) ? 'Recovered by rates as' : 'The part that rates recover',
          kind: 'choice',
          choices: isRateHome(values) ? byRates : [{ id: BY_NO_RATE, label: 'None' }, ...byRates],
          hint: isRateHome(values)
            ? 'The line of the rates that brings it back'
            : 'The pool is net of it: the floor under machines is in their rates',
        },
        { name: 'note', label: 'Note', kind: 'lines' },
      ],
    },
  ];
}

export function overheadAmountValues(amount: OverheadAmountRecord | null): FormValues {
  return {
    name: amount?.name ?? '',
    yearlyAmount: amount?.yearlyAmount ?? '',
    home: amount?.home ?? 'workshop-pool',
    recoveredAs: amount?.recoveredAs ?? BY_NO_RATE,
    note: amount?.note ?? '',
  };
}

export function overheadAmountInput(values: FormValues): BodyOf<typeof createOverheadAmount> {
  const home = textOf(values, 'home');
  const recoveredAs = textOf(values, 'recoveredAs');
  return {
    name: textOf(values, 'name'),
    yearlyAmount: plainDecimal(textOf(values, 'yearlyAmount')),
    home: HOMES.find((one) => one === home) ?? 'workshop-pool',
    recoveredAs: RECOVERIES.find((one) => one === recoveredAs) ?? null,
    note: textOf(values, 'note'),
  };
}
