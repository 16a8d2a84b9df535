import { BILL_COLUMNS, type BillMapping, missingBillColumns, ROW_KINDS } from '@scantling/costing';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ColumnMatch } from '../../../components/column-match.tsx';
import { Select } from '../../../components/select.tsx';
import type { BillReading } from '../api/import-bill.ts';
import '../../../components/record-editor/record-editor.css';

const EACH_SAYS = '';
const KIND_CHOICES = [
  { id: EACH_SAYS, label: 'each row says it, in the column "row"' },
  ...ROW_KINDS.map((kind) => ({ id: kind, label: kind })),
];

interface BillColumnsFormProps {
  readonly reading: BillReading;
  readonly isPending: boolean;
  readonly onRead: (mapping: BillMapping) => void;
  readonly onLeave?: (() => void) | undefined;
}

/** Which of the file's columns is which of a bill's; kept for the next file. */
export function BillColumnsForm({ reading, isPending, onRead, onLeave }: BillColumnsFormProps) {
  const [columns, setColumns] = useState<BillMapping['columns']>(reading.mapping?.columns ?? {});
  const [kind, setKind] = useState<string>(reading.mapping?.rowKind ?? EACH_SAYS);
  const rowKind = ROW_KINDS.find((one) => one === kind);
  const mapping: BillMapping = { columns, ...(rowKind === undefined ? {} : { rowKind }) };
  const open = missingBillColumns(mapping, reading.headers);
  return (
    <form
      className="record-form"
      onSubmit={(event) => {
        event.preventDefault();
        onRead(mapping);
      }}
    >
      <ColumnMatch
        columns={BILL_COLUMNS}
        headers={reading.headers}
        chosen={columns}
        onChange={setColumns}
        needed={open}
      >
        <Select label="What every row is" choices={KIND_CHOICES} value={kind} onChange={setKind} />
      </ColumnMatch>
      <div className="form-acts">
        <Button
          type="submit"
          look="main"
          isDisabled={open.length > 0}
          isPending={isPending}
          pendingText="Reading ..."
        >
          Read with these columns
        </Button>
        {onLeave && <Button onPress={onLeave}>Leave as it is</Button>}
        {open.length > 0 && <span className="field-hint">Still open: {open.join(', ')}.</span>}
      </div>
    </form>
  );
}
