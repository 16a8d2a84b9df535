import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import { Button } from '../../../components/button.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import type { Design } from '../api/get-design.ts';
import { type DesignRevisionSummary, designRevisionsQuery } from '../api/list-design-revisions.ts';
import { CompareRevisions } from './compare-revisions.tsx';
import { ReadRevision } from './read-revision.tsx';

const NUMBER: DataColumn<DesignRevisionSummary> = {
  id: 'number',
  header: 'Revision',
  text: ({ number }) => String(number),
  sortBy: ({ number }) => number,
};
const TEXTS: readonly DataColumn<DesignRevisionSummary>[] = [
  { id: 'day', header: 'Day', text: ({ createdAt }) => createdAt.slice(0, 10) },
  { id: 'madeBy', header: 'By', text: ({ madeBy }) => madeBy ?? 'no longer known' },
  { id: 'note', header: 'What and why', text: ({ note }) => note },
];
const count = (
  id: 'parts' | 'operations' | 'parameters' | 'variants',
  header: string,
): DataColumn<DesignRevisionSummary> => ({
  id,
  header,
  isNumeric: true,
  text: (row) => String(row[id]),
  sortBy: (row) => row[id],
});

interface RevisionsSectionProps {
  readonly design: Design;
  readonly etag: string | null;
  /** Something on the sheet is not saved yet. */
  readonly isBlocked: boolean;
}

/** The drawings a design had: read, compared and brought back; none is ever lost. */
export function RevisionsSection({ design, etag, isBlocked }: RevisionsSectionProps) {
  const revisions = useQuery(designRevisionsQuery(design.id, design.version));
  const [read, setRead] = useState<number | null>(null);
  const columns = useMemo(
    (): readonly DataColumn<DesignRevisionSummary>[] => [
      NUMBER,
      {
        id: 'read',
        header: 'Drawing',
        sortBy: false,
        text: () => '',
        render: ({ number }) => (
          <Button look="quiet" aria-label={`Read revision ${number}`} onPress={() => setRead(number)}>
            Read
          </Button>
        ),
      },
      ...TEXTS,
      count('parts', 'Parts'),
      count('operations', 'Operations'),
      count('parameters', 'Parameters'),
      count('variants', 'Variants'),
    ],
    [],
  );
  return (
    <Section title="Revisions" note="every save keeps the drawing as it stood">
      {revisions.isError && <ErrorNotice error={revisions.error} retry={() => void revisions.refetch()} />}
      {revisions.data && (
        <DataTable
          label="Revisions"
          columns={columns}
          rows={revisions.data}
          rowId={({ number }) => String(number)}
          currentRowId={read === null ? null : String(read)}
          onOpenRow={({ number }) => setRead(number)}
          maxHeight="40vh"
        />
      )}
      {read !== null && (
        <ReadRevision
          key={read}
          design={design}
          etag={etag}
          number={read}
          isBlocked={isBlocked}
          onClose={() => setRead(null)}
        />
      )}
      {revisions.data && revisions.data.length > 1 && (
        <CompareRevisions design={design} revisions={revisions.data} />
      )}
    </Section>
  );
}
