import { enterPayment, mailPaper, reversePayment } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { Section } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { formatMoney } from '../../../lib/format.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { MailPaperSection } from '../../papers/mail-paper-section.tsx';
import { PaperLink } from '../../papers/paper-link.tsx';
import type { Invoice, Payment } from '../api/get-invoice.ts';
import { useReversePayment } from '../api/invoice-acts.ts';
import { EnterPaymentForm } from './enter-payment-form.tsx';
import './invoice.css';

function Reverse({ payment, onDone }: { readonly payment: Payment; readonly onDone: () => void }) {
  const [reason, setReason] = useState('');
  const reverse = useReversePayment(payment.id);
  const { errorFor, unplaced } = fieldErrors(reverse.error, ['reason']);
  return (
    <>
      <TextInput
        label={`Why the payment of ${payment.receivedOn} is taken back`}
        hint="It stays listed, with an entry below 0 beside it."
        value={reason}
        onChange={setReason}
        error={errorFor('reason')}
      />
      {reverse.isError && <ErrorNotice error={reverse.error} errors={unplaced} />}
      <div className="invoice-acts">
        <Button
          look="main"
          isPending={reverse.isPending}
          pendingText="Taking back ..."
          onPress={() => reverse.mutate({ reason }, { onSuccess: onDone })}
        >
          Take it back
        </Button>
        <Button onPress={onDone}>Leave it</Button>
      </div>
    </>
  );
}

interface PaymentRowsProps {
  readonly invoice: Invoice;
  readonly onReverse: ((payment: Payment) => void) | null;
  readonly onMail: ((payment: Payment) => void) | null;
}

function PaymentRows({ invoice, onReverse, onMail }: PaymentRowsProps) {
  const { locale } = useLocale();
  return (
    <RuledFrame label="Payments entered">
      <table className="ruled-rows">
        <thead>
          <tr>
            <th scope="col">Received</th>
            <th scope="col" className="numeric">
              Amount
            </th>
            <th scope="col">How</th>
            <th scope="col">Receipt</th>
            <th scope="col">
              <span className="visually-hidden">Act</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {invoice.payments.map((payment) => (
            <tr key={payment.id}>
              <th scope="row">{payment.receivedOn}</th>
              <td className="numeric">{formatMoney(payment.amount, invoice.currency, { locale })}</td>
              <td>
                {payment.reversesId === null
                  ? [payment.method, payment.reference].filter((text) => text !== '').join(', ')
                  : `taken back: ${payment.reason}`}
              </td>
              <td>
                {payment.receiptPaperId === null ? (
                  ''
                ) : (
                  <span className="money-receipt">
                    <PaperLink id={payment.receiptPaperId}>{payment.receiptNumber}</PaperLink>
                    {payment.reversedById !== null && <span>the payment was taken back later</span>}
                    {onMail !== null && (
                      <Button
                        look="quiet"
                        aria-label={`Mail receipt ${payment.receiptNumber}`}
                        onPress={() => onMail(payment)}
                      >
                        Mail
                      </Button>
                    )}
                  </span>
                )}
              </td>
              <td>
                {payment.reversedById !== null && 'taken back'}
                {onReverse !== null && payment.reversesId === null && payment.reversedById === null && (
                  <Button
                    look="quiet"
                    aria-label={`Take back the payment of ${payment.receivedOn}`}
                    onPress={() => onReverse(payment)}
                  >
                    Take back
                  </Button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </RuledFrame>
  );
}

/** Money that came in on an invoice, entered in the parts it comes in; nothing entered is removed. */
export function PaymentsSection({ invoice }: { readonly invoice: Invoice }) {
  const [reversed, setReversed] = useState<Payment | null>(null);
  const [mailed, setMailed] = useState<Payment | null>(null);
  const mayMail = useMayCall(mailPaper);
  const mayEnter = useMayCall(enterPayment);
  const mayReverse = useMayCall(reversePayment);
  return (
    <Section title="Payments">
      {invoice.payments.length === 0 ? (
        <p className="money-note">No money has come in on it yet.</p>
      ) : (
        <PaymentRows
          invoice={invoice}
          onReverse={mayReverse ? setReversed : null}
          onMail={mayMail ? setMailed : null}
        />
      )}
      {reversed !== null && <Reverse key={reversed.id} payment={reversed} onDone={() => setReversed(null)} />}
      {mailed?.receiptPaperId != null && (
        <MailPaperSection
          key={mailed.id}
          documentId={mailed.receiptPaperId}
          title={`Mail receipt ${mailed.receiptNumber}`}
          isWriting
          onDone={() => setMailed(null)}
        />
      )}
      {mayEnter && decimal(invoice.owed).gt(0) && <EnterPaymentForm invoice={invoice} />}
    </Section>
  );
}
