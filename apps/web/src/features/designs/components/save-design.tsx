import type { Bill } from '@scantling/costing';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { placeWords } from './bill-edits.ts';
import './design.css';

interface SaveDesignProps {
  readonly bill: Bill;
  /** The revision it will become. */
  readonly revision: number;
  readonly isPending: boolean;
  readonly error: Error | null;
  readonly onSave: (note: string) => void;
  /** Drops what was changed here and shows what is saved by now. */
  readonly onTakeNewest: () => void;
  /** Saves what stands here after what somebody else saved meanwhile. */
  readonly onSaveOver: (note: string) => void;
}

/** Stands while something is changed and not saved. Every saving is a revision of its own. */
export function SaveDesign({
  bill,
  revision,
  isPending,
  error,
  onSave,
  onTakeNewest,
  onSaveOver,
}: SaveDesignProps) {
  const [note, setNote] = useState('');
  const problem = error instanceof ApiProblem ? error : null;
  const placed = problem?.errors.map((one) => ({ ...one, field: placeWords(one.field, bill) }));
  return (
    <div className="save-notice">
      <div className="save-bar">
        <TextInput label="Changed, not saved yet. What and why" value={note} onChange={setNote} />
        <Button look="main" isPending={isPending} pendingText="Saving ..." onPress={() => onSave(note)}>
          Save as revision {revision}
        </Button>
        {problem?.status !== 412 && <Button onPress={onTakeNewest}>Drop the changes</Button>}
      </div>
      {error !== null && <ErrorNotice error={error} {...(placed ? { errors: placed } : {})} />}
      {problem?.status === 412 && (
        <div className="sheet-actions">
          <Button onPress={onTakeNewest}>Take the other version</Button>
          <Button onPress={() => onSaveOver(note)}>Save mine as the revision after it</Button>
        </div>
      )}
    </div>
  );
}
