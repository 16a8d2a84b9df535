import { CURRENCIES } from '@scantling/money';
import { useState } from 'react';
import { EntryForm } from '../../../components/record-editor/entry-form.tsx';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { localToday } from '../../../lib/local-today.ts';
import { plainDecimal } from '../../../lib/percent.ts';
import { useCreateExchangeRate } from '../api/create-exchange-rate.ts';

const CHOICES = CURRENCIES.map((code) => ({ id: code, label: code }));
const GROUPS: readonly GroupSpec[] = [
  {
    fields: [
      { name: 'onDate', label: 'Day', kind: 'date', isRequired: true },
      { name: 'from', label: 'One unit of', kind: 'search', choices: CHOICES, isRequired: true },
      { name: 'rate', label: 'costs', kind: 'decimal', isRequired: true },
      { name: 'to', label: 'units of', kind: 'search', choices: CHOICES, isRequired: true },
      {
        name: 'source',
        label: 'Read where',
        kind: 'text',
        isRequired: true,
        hint: 'Such as the bank statement',
      },
    ],
  },
];

/** Enters a rate. A correction is another rate of the same day. */
export function NewRate({ currency }: { readonly currency: string }) {
  const [values, setValues] = useState<FormValues>({
    onDate: localToday(),
    from: '',
    to: currency,
    rate: '',
    source: '',
  });
  const create = useCreateExchangeRate();
  return (
    <EntryForm
      groups={GROUPS}
      values={values}
      onChange={setValues}
      entry={create}
      act="Enter the rate"
      pendingText="Saving ..."
      {...(create.isSuccess ? { said: 'Entered' } : {})}
      onEnter={() =>
        create.mutate(
          {
            onDate: textOf(values, 'onDate'),
            from: textOf(values, 'from'),
            to: textOf(values, 'to'),
            rate: plainDecimal(textOf(values, 'rate')),
            source: textOf(values, 'source'),
          },
          { onSuccess: () => setValues({ ...values, rate: '' }) },
        )
      }
    />
  );
}
