import { decimal } from '@scantling/decimals';
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

/** Its invoices and credit notes, in the order they were issued. */
export function StatementInvoices({ statement }: Pick<StatementRowsProps, 'statement'>) {
  const { locale } = useLocale();
  const columns = useMemo(() => invoiceColumns(locale), [locale]);
  const rows = [...statement.invoices.map(({ invoice }) => invoice), ...statement.creditNotes];
  const issued = rows.toSorted(
    (left, right) =>
      left.issuedOn.localeCompare(right.issuedOn) || decimal(right.total).comparedTo(left.total),
  );
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
