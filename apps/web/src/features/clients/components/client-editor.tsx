import { Link, useNavigate } from '@tanstack/react-router';
import { RecordSheet } from '../../../components/record-editor/record-sheet.tsx';
import { clientCalls } from '../api/client-calls.ts';
import { CLIENT_GROUPS, clientInput, clientValues } from './client-fields.ts';

/** The sheet of a client; `id` is null for a new one. */
export function ClientEditor({ id }: { readonly id: string | null }) {
  const navigate = useNavigate();
  return (
    <RecordSheet
      calls={clientCalls}
      id={id}
      path={<Link to="/clients">Clients</Link>}
      newTitle="New client"
      consequence="Name, address and notes are gone for good; cost sheets made for them stay, without a client."
      facts={(client) => [{ label: 'Since', value: client.createdAt.slice(0, 10) }]}
      actions={(client) => (
        <Link
          to="/clients/$clientId/statement"
          params={{ clientId: client.id }}
          className="button button-plain"
        >
          Statement
        </Link>
      )}
      groups={CLIENT_GROUPS}
      toValues={clientValues}
      toInput={clientInput}
      onCreated={() => void navigate({ to: '/clients' })}
      onRemoved={() => void navigate({ to: '/clients' })}
    />
  );
}
