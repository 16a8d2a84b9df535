import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { designChangesQuery } from '../api/compare-design-revisions.ts';
import type { Design } from '../api/get-design.ts';
import { designRevisionQuery } from '../api/get-design-revision.ts';
import type { DesignRevisionSummary } from '../api/list-design-revisions.ts';
import { type ChangeLine, changeLines } from './change-words.ts';

const UNIT_WORDS = { metric: 'millimetres', imperial: 'inches' } as const;

interface DifferencesProps {
  readonly design: Design;
  readonly from: number;
  readonly to: number;
}

function Differences({ design: { id, unitSystem }, from, to }: DifferencesProps) {
  const changes = useQuery(designChangesQuery(id, from, to));
  const before = useQuery(designRevisionQuery(id, from));
  const after = useQuery(designRevisionQuery(id, to));
  const columns = useMemo(
    (): readonly DataColumn<ChangeLine>[] => [
      { id: 'row', header: 'Row', width: 200, text: ({ row }) => row },
      { id: 'section', header: 'Of', width: 180, text: ({ section }) => section },
      { id: 'field', header: 'What differs', width: 160, text: ({ field }) => field },
      { id: 'before', header: `Revision ${from}`, width: 260, text: (line) => line.before },
      { id: 'after', header: `Revision ${to}`, width: 260, text: (line) => line.after },
    ],
    [from, to],
  );
  const failed = [changes, before, after].find(({ isError }) => isError);
  if (failed) return <ErrorNotice error={failed.error} retry={() => void failed.refetch()} />;
  if (!changes.data || !before.data || !after.data) return <Loading />;
  const lines = changeLines(changes.data, before.data, after.data, unitSystem);
  const [was, is] = [before.data.unitSystem, after.data.unitSystem];
  return (
    <>
      {was !== is && (
        <p>
          Bare numbers in formulas are {UNIT_WORDS[was]} in revision {from} and {UNIT_WORDS[is]} in revision{' '}
          {to}.
        </p>
      )}
      {lines.length === 0 ? (
        <p>
          Nothing differs between the drawings of revision {from} and revision {to}.
        </p>
      ) : (
        <DataTable
          label={`From revision ${from} to revision ${to}`}
          columns={columns}
          rows={lines}
          rowId={({ key }) => key}
          maxHeight="60vh"
        />
      )}
    </>
  );
}

interface CompareRevisionsProps {
  readonly design: Design;
  readonly revisions: readonly DesignRevisionSummary[];
}

/** Two drawings of a design, value by value where they differ. */
export function CompareRevisions({ design, revisions }: CompareRevisionsProps) {
  const [from, setFrom] = useState<number | null>(null);
  const [to, setTo] = useState<number | null>(null);
  const newest = design.version;
  const choices = revisions.map(({ number, note, createdAt }) => ({
    id: String(number),
    label: `Revision ${number}`,
    note: [createdAt.slice(0, 10), note].filter(Boolean).join(', '),
  }));
  return (
    <>
      <FieldGroup legend="Compare two revisions">
        <Select
          label="From"
          choices={choices}
          value={from === null ? null : String(from)}
          onChange={(id) => setFrom(Number(id))}
        />
        <Select
          label="To"
          choices={choices}
          value={String(to ?? newest)}
          onChange={(id) => setTo(Number(id))}
        />
      </FieldGroup>
      {from !== null && <Differences design={design} from={from} to={to ?? newest} />}
    </>
  );
}
