import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatMoney } from '../../../lib/format.ts';
import { type Overdue, overdueQuery } from '../api/list-overdue.ts';
import { OWED_FIGURE } from '../components/invoice-columns.tsx';
import { standing } from '../components/invoice-words.ts';
import { ReminderAct } from '../components/reminder-act.tsx';
import '../components/invoice.css';

function One({ overdue }: { readonly overdue: Overdue }) {
  const { invoice, remindersSent, lastRemindedOn } = overdue;
  const { locale } = useLocale();
  return (
    <Section
      title={`${invoice.number}, ${invoice.clientName}`}
      note={`${standing(invoice.state, invoice.daysOverdue)}, ${formatMoney(invoice.owed, invoice.currency, { locale })} owed; ${
        lastRemindedOn === null
          ? 'not reminded yet'
          : `reminded ${remindersSent} times, last on ${lastRemindedOn}`
      }`}
      actions={
        <Link to="/invoices/$invoiceId" params={{ invoiceId: invoice.id }} search={{ figure: OWED_FIGURE }}>
          Open the invoice at what is owed
        </Link>
      }
    >
      <ReminderAct overdue={overdue} />
    </Section>
  );
}

/** Invoices past their day, the longest first, each with a reminder ready to mail or copy. */
export function OverdueScreen() {
  const overdue = useQuery(overdueQuery);
  return (
    <Sheet>
      <SheetHeader
        title="Overdue"
        path={<Link to="/invoices">Invoices</Link>}
        facts={overdue.data ? [{ label: 'Overdue', value: overdue.data.length }] : []}
      />
      {overdue.isPending && <Loading />}
      {overdue.isError && <ErrorNotice error={overdue.error} retry={() => void overdue.refetch()} />}
      {overdue.data?.length === 0 && (
        <EmptyState title="Nothing is overdue" action={<Link to="/invoices">Show all invoices</Link>}>
          An invoice stands here from the day after it was due, until it is paid or credited.
        </EmptyState>
      )}
      {overdue.data?.map((one) => (
        <One key={one.invoice.id} overdue={one} />
      ))}
    </Sheet>
  );
}
