import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { RecordCalls } from '../../lib/record-calls.ts';
import { useMayCall } from '../../lib/use-session.ts';
import type { DataColumn } from '../data-table/data-column.ts';
import { DataTable } from '../data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../notices.tsx';
import { Loading } from '../progress.tsx';
import { TextInput } from '../text-input.tsx';
import './record-editor.css';

interface RecordListProps<Value extends { readonly id: string }> {
  readonly calls: RecordCalls<Value>;
  readonly label: string;
  readonly columns: readonly DataColumn<Value>[];
  /** The link that leads to a new record; shown to who may make one. */
  readonly newLink: React.ReactNode;
  /** What stands here once there is something, and how it gets here. */
  readonly emptyTitle: string;
  readonly emptyText: string;
  readonly onOpen: (record: Value) => void;
}

const SEARCH_FROM = 12;

/** All records of a kind as a table, found by words in any column. */
export function RecordList<Value extends { readonly id: string }>(props: RecordListProps<Value>) {
  const { calls, columns } = props;
  const list = useQuery(calls.listQuery);
  const mayCreate = useMayCall(calls.contracts.create);
  const [sought, setSought] = useState('');
  const found = useMemo(() => {
    const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
    return (list.data ?? []).filter((row) => {
      const text = columns.map((column) => column.text(row).toLowerCase()).join(' ');
      return words.every((word) => text.includes(word));
    });
  }, [list.data, columns, sought]);
  if (list.isPending) return <Loading />;
  if (list.isError) return <ErrorNotice error={list.error} retry={() => void list.refetch()} />;
  if (list.data.length === 0) {
    return (
      <EmptyState title={props.emptyTitle} action={mayCreate && props.newLink}>
        {props.emptyText}
      </EmptyState>
    );
  }
  return (
    <>
      <div className="list-acts">
        {list.data.length >= SEARCH_FROM && (
          <TextInput label="Find" type="search" value={sought} onChange={setSought} />
        )}
        <span role="status" className="field-hint">
          {sought === '' ? `${list.data.length} in all` : `${found.length} of ${list.data.length}`}
        </span>
        {mayCreate && props.newLink}
      </div>
      <DataTable
        label={props.label}
        columns={columns}
        rows={found}
        rowId={(row) => row.id}
        onOpenRow={props.onOpen}
        empty="Nothing fits what is sought."
      />
    </>
  );
}
