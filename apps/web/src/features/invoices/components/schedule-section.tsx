import { issueInvoice } from '@scantling/contracts';
import { Link } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney, formatPercent } from '../../../lib/format.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import type { ScheduledPayment, Statement } from '../api/get-statement.ts';
import './invoice.css';

interface ScheduleSectionProps {
  readonly statement: Statement;
  readonly onWanted: (payment: ScheduledPayment) => void;
}

/** The payments agreed, and for each its invoice or the act that leads to it. */
export function ScheduleSection({ statement, onWanted }: ScheduleSectionProps) {
  const { locale } = useLocale();
  const mayIssue = useMayCall(issueInvoice);
  if (statement.schedule.length === 0) return null;
  const numberOf = (id: string): string =>
    statement.invoices.find(({ invoice }) => invoice.id === id)?.invoice.number ?? 'its invoice';
  return (
    <Section title="Payments agreed" note="as the client accepted them">
      <RuledFrame label="Payments agreed, in rows">
        <table className="ruled-rows">
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">Agreed in</th>
              <th scope="col" className="numeric">
                Share
              </th>
              <th scope="col" className="numeric">
                Amount with tax
              </th>
              <th scope="col">Invoice</th>
            </tr>
          </thead>
          <tbody>
            {statement.schedule.map((payment) => (
              <tr key={`${payment.revisionId} ${payment.partId}`}>
                <th scope="row" className="ruled-name">
                  {payment.label}
                </th>
                <td className="unbroken">{payment.number}</td>
                <td className="numeric">{formatPercent(payment.share, 1, { locale })}</td>
                <td className="numeric">{formatMoney(payment.amount, statement.currency, { locale })}</td>
                <td>
                  {payment.invoiceId !== null ? (
                    <Link to="/invoices/$invoiceId" params={{ invoiceId: payment.invoiceId }}>
                      {numberOf(payment.invoiceId)}
                    </Link>
                  ) : mayIssue ? (
                    <Button
                      look="quiet"
                      aria-label={`Prepare the invoice: ${payment.label}`}
                      onPress={() => onWanted(payment)}
                    >
                      Prepare the invoice
                    </Button>
                  ) : (
                    'not issued yet'
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </RuledFrame>
    </Section>
  );
}
