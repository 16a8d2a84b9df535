import { useQuery } from '@tanstack/react-query';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import type { Invoice } from '../api/get-invoice.ts';
import { overdueQuery } from '../api/list-overdue.ts';
import { ReminderAct } from './reminder-act.tsx';

/** Reminders that went out, and for an overdue invoice the next one. */
export function RemindersSection({ invoice }: { readonly invoice: Invoice }) {
  const isOverdue = invoice.state === 'overdue';
  const overdue = useQuery({ ...overdueQuery, enabled: isOverdue });
  const own = overdue.data?.find((one) => one.invoice.id === invoice.id);
  if (!isOverdue && invoice.reminders.length === 0) return null;
  return (
    <Section title="Reminders" note="at most one a day">
      {invoice.reminders.length > 0 && (
        <ul>
          {invoice.reminders.map(({ id, sentOn, mailedTo }) => (
            <li key={id}>
              {sentOn}, to {mailedTo}
            </li>
          ))}
        </ul>
      )}
      {isOverdue && overdue.isPending && <Loading />}
      {overdue.isError && <ErrorNotice error={overdue.error} retry={() => void overdue.refetch()} />}
      {isOverdue && own !== undefined && <ReminderAct overdue={own} />}
    </Section>
  );
}
