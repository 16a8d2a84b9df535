import { compareDesigns, type DesignChange, type DrawnDesign } from '@scantling/costing';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { inWords, sectionWords } from './change-words.ts';

const CHANGE_WORDS = { added: 'new', changed: 'changed', removed: 'gone' } as const;

const COLUMNS: readonly DataColumn<DesignChange>[] = [
  { id: 'change', header: 'Change', width: 110, text: ({ kind }) => CHANGE_WORDS[kind] },
  { id: 'kind', header: 'Of', width: 180, text: ({ section }) => sectionWords(section) },
  { id: 'id', header: 'Id', width: 140, text: ({ id }) => id },
  { id: 'name', header: 'Name', width: 260, text: ({ name }) => name },
  {
    id: 'fields',
    header: 'What differs',
    width: 320,
    text: ({ fields }) => fields.map(({ field }) => inWords(field)).join(', '),
  },
];

function rowCount({ bill, parameters, variants }: DrawnDesign): number {
  const rows = Object.values(bill).reduce((total, kind) => total + kind.length, 0);
  return rows + parameters.length + variants.length;
}

interface BillChangesProps {
  readonly before: DrawnDesign;
  readonly after: DrawnDesign;
}

/** What taking a file over changes of the design there is, row by row. */
export function BillChanges({ before, after }: BillChangesProps) {
  const changed = useMemo(() => compareDesigns(before, after), [before, after]);
  const same = rowCount(after) - changed.filter(({ kind }) => kind !== 'removed').length;
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
          rowId={({ section, id, kind }) => `${section} ${id} ${kind}`}
          maxHeight="50vh"
        />
      )}
    </>
  );
}
