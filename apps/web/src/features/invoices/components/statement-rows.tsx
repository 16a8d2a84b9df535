import { useMemo } from 'react';
import { useLocale } from 'react-aria-components';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { Section } from '../../../components/sheet.tsx';
import type { Statement } from '../api/get-statement.ts';
import { BalanceRow } from './balance-row.tsx';
import { invoiceColumns } from './invoice-columns.tsx';
import './invoice.css';

interface StatementRowsProps {
  readonly statement: Statement;
  /** How a figure of it is called in the table around. */
  readonly named?: (id: string) => string;
}

/** What it comes to in one currency. */
export function StatementSums({ statement, named = (id) => id }: StatementRowsProps) {
  return (
    <BalanceRow
      label={`What is owed in ${statement.currency}`}
      sums={[
        { label: 'Agreed in all', figure: named(statement.contract) },
        { label: 'Left to invoice', figure: named(statement.leftToInvoice) },
        { label: 'Invoiced', figure: named(statement.invoiced) },
        { label: 'Credited', figure: named(statement.credited) },
        { label: 'Paid', figure: named(statement.paid) },
        { label: 'Overdue', figure: named(statement.overdue) },
        { label: 'Owed', figure: named(statement.owed) },
      ]}
    />
  );
}

interface StatementInvoicesProps extends Pick<StatementRowsProps, 'statement'> {
  /** Columns that say the same in every row here. */
  readonly without: readonly string[];
}

/** Its invoices and credit notes, in the order they were issued. */
export function StatementInvoices({ statement, without }: StatementInvoicesProps) {
  const { locale } = useLocale();
  const columns = useMemo(
    () => invoiceColumns(locale).filter(({ id }) => !without.includes(id)),
    [locale, without],
  );
  const rows = [...statement.invoices.map(({ invoice }) => invoice), ...statement.creditNotes];
  // Ids are made in the order of time (UUID 7).
  const issued = rows.toSorted((left, right) => (left.id < right.id ? -1 : 1));
  return (
    <Section title={`Invoices in ${statement.currency}`}>
      {issued.length === 0 ? (
        <p className="money-note">Nothing is invoiced yet.</p>
      ) : (
        <DataTable
          label={`Invoices in ${statement.currency}`}
          columns={columns}
          rows={issued}
          rowId={({ id }) => id}
        />
      )}
    </Section>
  );
}
