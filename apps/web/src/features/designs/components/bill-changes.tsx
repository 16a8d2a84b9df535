import { type Bill, type BillRowChange, compareBills } from '@scantling/costing';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { KIND_WORDS } from './bill-fields.ts';

const COLUMNS: readonly DataColumn<BillRowChange>[] = [
  { id: 'change', header: 'Change', width: 110, text: ({ change }) => change },
  { id: 'kind', header: 'Of', width: 180, text: ({ kind }) => KIND_WORDS[kind].title },
  { id: 'id', header: 'Id', width: 140, text: ({ id }) => id },
  { id: 'name', header: 'Name', width: 260, text: ({ name }) => name },
  { id: 'fields', header: 'What differs', width: 320, text: ({ fields }) => fields.map(inWords).join(', ') },
];

/** "lengthAllowance" as it is read: "length allowance". */
function inWords(name: string): string {
  return name
    .replace(/^(is|has)(?=[A-Z])/, '')
    .replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter}`)
    .toLowerCase();
}

/** What taking a file's bill over changes of the bill there is, row by row. */
export function BillChanges({ before, after }: { readonly before: Bill; readonly after: Bill }) {
  const rows = useMemo(() => compareBills(before, after), [before, after]);
  const changed = rows.filter(({ change }) => change !== 'unchanged');
  const same = rows.length - changed.length;
  return (
    <>
      <p>
        {changed.length === 0
          ? 'The file holds the bill that is there already'
          : `${changed.length} rows change`}
        {same > 0 ? `; ${same} stay as they are.` : '.'}
      </p>
      {changed.length > 0 && (
        <DataTable
          label="What the file changes"
          columns={COLUMNS}
          rows={changed}
          rowId={({ kind, id, change }) => `${kind} ${id} ${change}`}
          maxHeight="50vh"
        />
      )}
    </>
  );
}
