import type { ClientRecord } from '@scantling/contracts';
import { Link, useNavigate } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { RecordList } from '../../../components/record-editor/record-list.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { clientCalls } from '../api/client-calls.ts';

const COLUMNS: readonly DataColumn<ClientRecord>[] = [
  {
    id: 'name',
    header: 'Client',
    text: ({ name }) => name,
    render: (client) => (
      <Link to="/clients/$clientId" params={{ clientId: client.id }}>
        {client.name}
      </Link>
    ),
  },
  { id: 'email', header: 'E-mail address', text: ({ email }) => email ?? '' },
  { id: 'phone', header: 'Telephone', text: ({ phone }) => phone },
  { id: 'address', header: 'Address', text: ({ address }) => address.lines.join(', ') },
  { id: 'createdAt', header: 'Since', text: ({ createdAt }) => createdAt.slice(0, 10) },
  { id: 'demo', header: 'Demo', text: ({ isDemo }) => (isDemo ? 'invented' : '') },
];

/** Whom pieces are made for. */
export function ClientsScreen() {
  const navigate = useNavigate();
  return (
    <Sheet>
      <SheetHeader title="Clients" />
      <RecordList
        calls={clientCalls}
        label="Clients"
        columns={COLUMNS}
        newLink={<Link to="/clients/new">Enter a client</Link>}
        emptyTitle="Here stands whom pieces are made for"
        emptyText="A cost sheet can name the client it is for."
        onOpen={(client) => void navigate({ to: '/clients/$clientId', params: { clientId: client.id } })}
      />
    </Sheet>
  );
}
