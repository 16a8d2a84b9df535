import { CURRENCIES } from '@scantling/money';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import {
  type FormValues,
  type GroupSpec,
  shownNames,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { FormFields } from '../../../components/record-editor/form-fields.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
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
  const { errorFor, unplaced } = fieldErrors(create.error, shownNames(GROUPS, values));
  return (
    <form
      className="record-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        create.mutate(
          {
            onDate: textOf(values, 'onDate'),
            from: textOf(values, 'from'),
            to: textOf(values, 'to'),
            rate: plainDecimal(textOf(values, 'rate')),
            source: textOf(values, 'source'),
          },
          { onSuccess: () => setValues({ ...values, rate: '' }) },
        );
      }}
    >
      {create.isError && <ErrorNotice error={create.error} errors={unplaced} />}
      <FormFields groups={GROUPS} values={values} onChange={setValues} errorFor={errorFor} />
      <div className="form-acts">
        <Button type="submit" look="main" isPending={create.isPending} pendingText="Saving ...">
          Enter the rate
        </Button>
        <span role="status" className="form-said">
          {create.isSuccess ? 'Entered' : ''}
        </span>
      </div>
    </form>
  );
}
