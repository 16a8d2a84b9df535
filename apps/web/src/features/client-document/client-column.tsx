import { Link } from '@tanstack/react-router';
import type { DataColumn } from '../../components/data-table/data-column.ts';

/** The client of a row, leading to their record. */
export function clientColumn<
  Row extends { readonly clientId: string; readonly clientName: string },
>(): DataColumn<Row> {
  return {
    id: 'client',
    header: 'Client',
    text: ({ clientName }) => clientName,
    render: ({ clientId, clientName }) => (
      <Link to="/clients/$clientId" params={{ clientId }}>
        {clientName}
      </Link>
    ),
  };
}
