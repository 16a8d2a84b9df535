import type { BillMapping, DrawnDesign } from '@scantling/costing';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FileDrop } from '../../../components/file-drop.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { type BillReading, useImportBill } from '../api/import-bill.ts';
import { BillChanges } from './bill-changes.tsx';
import { BillColumnsForm } from './bill-columns-form.tsx';
import { BILL_KINDS, KIND_WORDS } from './bill-fields.ts';
import './design.css';
import '../../../components/save-notice.css';

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
  /** The design as it stands, to show what the file changes. */
  readonly design: DrawnDesign;
  /** Changes stand on the sheet that are not saved, which the file would take away. */
  readonly isBlocked: boolean;
  /** The file's bill is now the design's newest revision. */
  readonly onApplied: () => void;
}

/** A bill from a file: columns matched, looked at, then taken whole or not at all. */
export function ImportSection({ id, etag, design, isBlocked, onApplied }: ImportSectionProps) {
  const [file, setFile] = useState<File | null>(null);
  const [said, setSaid] = useState<BillMapping>();
  const [isMatching, setIsMatching] = useState(false);
  const look = useImportBill(id);
  const apply = useImportBill(id);
  const reading = look.data?.value;
  const mustMatch = reading !== undefined && reading.missingColumns.length > 0;
  const read = (chosen: File, mapping?: BillMapping): void => {
    apply.reset();
    setSaid(mapping);
    look.mutate({ file: chosen, etag, isPreview: true, mapping }, { onSuccess: () => setIsMatching(false) });
  };
  return (
    <Section title="Read the bill from a file" note="CSV or XLSX; it takes the place of the bill above">
      <FileDrop
        label={file === null ? 'Bill of materials' : file.name}
        endings={['.csv', '.tsv', '.txt', '.xlsx']}
        isDisabled={isBlocked || look.isPending || apply.isPending}
        onFile={(chosen) => {
          setFile(chosen);
          read(chosen);
        }}
      />
      {isBlocked && (
        <p className="field-hint">Save or drop the changes first; a file takes the place of them too.</p>
      )}
      {look.isError && <ErrorNotice error={look.error} />}
      {apply.isError && <ErrorNotice error={apply.error} />}
      {reading && file && (mustMatch || isMatching) && !apply.isSuccess ? (
        <Section
          title="Which column is which"
          note={
            mustMatch
              ? 'The file names its columns in another way. The answer is kept.'
              : 'The answer is kept.'
          }
        >
          <BillColumnsForm
            key={reading.headers.join(' | ')}
            reading={reading}
            isPending={look.isPending}
            onRead={(mapping) => read(file, mapping)}
            onLeave={mustMatch ? undefined : () => setIsMatching(false)}
          />
        </Section>
      ) : (
        reading && <Found reading={reading} onMatch={() => setIsMatching(true)} />
      )}
      {reading?.bill && file && !isMatching && !apply.isSuccess && (
        <>
          <BillChanges before={design} after={{ ...reading, bill: reading.bill }} />
          <div className="save-bar">
            <p>The file holds {countsOf(reading.bill) || 'an empty bill'}.</p>
            <Button
              look="main"
              isPending={apply.isPending}
              isDisabled={isBlocked}
              pendingText="Reading in ..."
              onPress={() =>
                apply.mutate(
                  { file, etag, isPreview: false, mapping: said },
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
        </>
      )}
      {apply.data?.value.isApplied && <p role="status">Taken as revision {apply.data.value.version}.</p>}
    </Section>
  );
}

/** What was found in the file, and what is to be mended in it. */
function Found({ reading, onMatch }: { readonly reading: BillReading; readonly onMatch: () => void }) {
  const { problems, ignoredHeaders, headers } = reading;
  return (
    <>
      {ignoredHeaders.length > 0 && (
        <p>Not read, since they are none of a bill's columns: {ignoredHeaders.join(', ')}.</p>
      )}
      {headers.length > 0 && <Button onPress={onMatch}>Change the columns</Button>}
      {problems.length > 0 && (
        <>
          <p role="alert" className="field-error">
            {problems.length} to mend in the file; nothing was changed.
          </p>
          <DataTable
            label="Problems in the file"
            columns={COLUMNS}
            rows={problems}
            rowId={(problem) => `${problem.line} ${problem.column} ${problem.message}`}
          />
        </>
      )}
    </>
  );
}
