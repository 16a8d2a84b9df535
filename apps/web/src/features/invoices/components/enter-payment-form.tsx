import { useState } from 'react';
import { EntryForm } from '../../../components/record-editor/entry-form.tsx';
import { type FormValues, isTicked, textOf } from '../../../components/record-editor/field-spec.ts';
import { localToday } from '../../../lib/local-today.ts';
import { plainDecimal } from '../../../lib/percent.ts';
import type { Invoice } from '../api/get-invoice.ts';
import { useEnterPayment } from '../api/invoice-acts.ts';

function freshValues(owed: string): FormValues {
  return {
    amount: owed,
    receivedOn: localToday(),
    method: 'bank transfer',
    reference: '',
    withReceipt: true,
  };
}

/** Enters money that came in on an invoice; what is owed stands in it to begin with. */
export function EnterPaymentForm({ invoice }: { readonly invoice: Invoice }) {
  const [values, setValues] = useState(() => freshValues(invoice.owed));
  const enter = useEnterPayment(invoice.id);
  return (
    <EntryForm
      groups={[
        {
          legend: 'Money came in',
          fields: [
            {
              kind: 'decimal',
              name: 'amount',
              label: 'Amount',
              suffix: invoice.currency,
              isRequired: true,
            },
            { kind: 'date', name: 'receivedOn', label: 'Received on', isRequired: true },
            { kind: 'text', name: 'method', label: 'How', hint: 'bank transfer, cash', isRequired: true },
            { kind: 'text', name: 'reference', label: 'Reference', hint: 'as the bank names it' },
            { kind: 'check', name: 'withReceipt', label: 'Make a receipt' },
          ],
        },
      ]}
      values={values}
      onChange={setValues}
      onEnter={() =>
        enter.mutate(
          {
            amount: plainDecimal(textOf(values, 'amount')),
            receivedOn: textOf(values, 'receivedOn'),
            method: textOf(values, 'method'),
            reference: textOf(values, 'reference'),
            withReceipt: isTicked(values, 'withReceipt'),
          },
          { onSuccess: ({ value }) => setValues(freshValues(value.owed)) },
        )
      }
      entry={enter}
      act="Enter the payment"
      pendingText="Entering ..."
      said={enter.isSuccess ? 'Entered.' : ''}
    />
  );
}
