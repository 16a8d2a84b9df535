import { creditInvoice } from '@scantling/contracts';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { EntryForm } from '../../../components/record-editor/entry-form.tsx';
import { type FormValues, isTicked, textOf } from '../../../components/record-editor/field-spec.ts';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney } from '../../../lib/format.ts';
import { optionalDecimal } from '../../../lib/percent.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import type { Invoice } from '../api/get-invoice.ts';
import { useCreditInvoice } from '../api/invoice-acts.ts';
import { TaxCaution } from './tax-caution.tsx';
import './invoice.css';

const FRESH: FormValues = { amount: '', reason: '', sendMail: true };

/** Gives back an invoice, whole or in part, by a paper with a number of its own. */
export function CreditSection({ invoice }: { readonly invoice: Invoice }) {
  const { locale } = useLocale();
  const [isOpen, setIsOpen] = useState(false);
  const [values, setValues] = useState(FRESH);
  const credit = useCreditInvoice(invoice.id);
  const mayCredit = useMayCall(creditInvoice) && invoice.state !== 'credited';
  if (!mayCredit && invoice.creditNotes.length === 0) return null;
  return (
    <Section title="Credit notes" note="the invoice itself stays as it was issued">
      {invoice.creditNotes.length > 0 && (
        <ul>
          {invoice.creditNotes.map(({ id, number, issuedOn, total }) => (
            <li key={id}>
              <Link to="/invoices/$invoiceId" params={{ invoiceId: id }}>
                {number}
              </Link>{' '}
              of {issuedOn}, {formatMoney(total, invoice.currency, { locale })}
            </li>
          ))}
        </ul>
      )}
      {mayCredit && !isOpen && (
        <div>
          <Button onPress={() => setIsOpen(true)}>Credit this invoice</Button>
        </div>
      )}
      {mayCredit && isOpen && (
        <EntryForm
          groups={[
            {
              fields: [
                {
                  kind: 'decimal',
                  name: 'amount',
                  label: 'Amount with tax',
                  hint: 'Empty: all that is left of it.',
                  suffix: invoice.currency,
                },
                { kind: 'text', name: 'reason', label: 'Why', isRequired: true, isWide: true },
                { kind: 'check', name: 'sendMail', label: 'Mail it to the client' },
              ],
            },
          ]}
          values={values}
          onChange={setValues}
          onEnter={() =>
            credit.mutate(
              {
                amount: optionalDecimal(textOf(values, 'amount')),
                reason: textOf(values, 'reason'),
                sendMail: isTicked(values, 'sendMail'),
              },
              {
                onSuccess: () => {
                  setValues(FRESH);
                  setIsOpen(false);
                },
              },
            )
          }
          entry={credit}
          act="Issue the credit note"
          pendingText="Issuing ..."
        >
          <p className="money-note">It gets a number of its own and cannot be changed afterwards.</p>
          <TaxCaution of="credit-note" />
        </EntryForm>
      )}
    </Section>
  );
}
