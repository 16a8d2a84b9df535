import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FileDrop } from '../../../components/file-drop.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { type BillReading, useImportBill } from '../api/import-bill.ts';
import { BILL_KINDS, KIND_WORDS } from './bill-fields.ts';

type Problem = BillReading['problems'][number];

const COLUMNS: readonly DataColumn<Problem>[] = [
  { id: 'column', header: 'Column', text: (problem) => problem.column },
  {
    id: 'line',
    header: 'Line',
    isNumeric: true,
    text: (problem) => (problem.line === 0 ? 'whole file' : String(problem.line)),
    sortBy: (problem) => problem.line,
  },
  { id: 'message', header: 'What is wrong', text: (problem) => problem.message },
  { id: 'mend', header: 'How to mend it', text: (problem) => problem.mend },
];

function countsOf(bill: NonNullable<BillReading['bill']>): string {
  return BILL_KINDS.filter((kind) => bill[kind].length > 0)
    .map((kind) => `${KIND_WORDS[kind].title.toLowerCase()} ${bill[kind].length}`)
    .join(', ');
}

interface ImportSectionProps {
  readonly id: string;
  readonly etag: string | null;
  /** Changes stand on the sheet that are not saved, which the file would take away. */
  readonly isBlocked: boolean;
  /** The file's bill is now the design's newest revision. */
  readonly onApplied: () => void;
}

/** A bill from a file: first looked at, then taken whole or not at all. */
export function ImportSection({ id, etag, isBlocked, onApplied }: ImportSectionProps) {
  const [file, setFile] = useState<File | null>(null);
  const look = useImportBill(id);
  const apply = useImportBill(id);
  const reading = look.data?.value;
  return (
    <Section title="Read the bill from a file" note="CSV or XLSX; it takes the place of the bill above">
      <FileDrop
        label={file === null ? 'Bill of materials' : file.name}
        endings={['.csv', '.xlsx']}
        isDisabled={isBlocked || look.isPending || apply.isPending}
        onFile={(chosen) => {
          setFile(chosen);
          apply.reset();
          look.mutate({ file: chosen, etag, isPreview: true });
        }}
      />
      {isBlocked && (
        <p className="field-hint">Save or drop the changes first; a file takes the place of them too.</p>
      )}
      {look.isError && <ErrorNotice error={look.error} />}
      {apply.isError && <ErrorNotice error={apply.error} />}
      {reading && reading.ignoredHeaders.length > 0 && (
        <p>Not read, since they are none of a bill's columns: {reading.ignoredHeaders.join(', ')}.</p>
      )}
      {reading && reading.problems.length > 0 && (
        <>
          <p role="alert" className="field-error">
            {reading.problems.length} to mend in the file; nothing was changed.
          </p>
          <DataTable
            label="Problems in the file"
            columns={COLUMNS}
            rows={reading.problems}
            rowId={(problem) => `${problem.line} ${problem.column} ${problem.message}`}
          />
        </>
      )}
      {reading?.bill && file && !apply.isSuccess && (
        <div className="save-bar">
          <p>The file holds {countsOf(reading.bill) || 'an empty bill'}.</p>
          <Button
            look="main"
            isPending={apply.isPending}
            isDisabled={isBlocked}
            pendingText="Reading in ..."
            onPress={() =>
              apply.mutate(
                { file, etag, isPreview: false },
                {
                  onSuccess: ({ value }) => {
                    if (value.isApplied) onApplied();
                  },
                },
              )
            }
          >
            Take this bill
          </Button>
        </div>
      )}
      {apply.data?.value.isApplied && <p role="status">Taken as revision {apply.data.value.version}.</p>}
    </Section>
  );
}
