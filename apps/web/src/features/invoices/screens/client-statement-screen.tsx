import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { Figures } from '../../figures/figures.tsx';
import { statementQuery } from '../api/get-statement.ts';
import { StatementInvoices, StatementSums } from '../components/statement-rows.tsx';
import '../components/invoice.css';

const SAME_THROUGHOUT = ['client'];

/** What a client agreed to, was invoiced, paid and owes, by currency. */
export function ClientStatementScreen() {
  const { clientId = '' } = useParams({ strict: false });
  const read = useQuery(statementQuery({ clientId }));
  const name = read.data?.client.name;
  return (
    <Figures table={read.data?.figures ?? {}}>
      <Sheet>
        <SheetHeader
          title="Statement"
          path={
            <Link to="/clients/$clientId" params={{ clientId }}>
              {name ?? 'Client'}
            </Link>
          }
          facts={
            read.data
              ? [
                  { label: 'As of', value: read.data.asOf },
                  ...(name === undefined ? [] : [{ label: 'Client', value: name }]),
                ]
              : []
          }
        />
        {read.isPending && <Loading />}
        {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
        {read.data?.statements.length === 0 && (
          <EmptyState
            title="Nothing is agreed with this client yet"
            action={
              <Link to="/quotes" search={{ clientId }}>
                Show the quotes
              </Link>
            }
          >
            What is invoiced, paid and owed stands here from the first accepted quote.
          </EmptyState>
        )}
        {read.data?.statements.map((statement) => (
          <div key={statement.currency}>
            <StatementSums statement={statement} />
            <StatementInvoices statement={statement} without={SAME_THROUGHOUT} />
          </div>
        ))}
      </Sheet>
    </Figures>
  );
}
