import { Button } from '../../../components/button.tsx';
import type { GridUndo } from '../../../components/edit-grid/grid-edits.ts';
import { ErrorNotice } from '../../../components/notices.tsx';
import { ChangeClash } from '../../../components/record-editor/change-clash.tsx';
import type { Difference } from '../../../components/record-editor/field-spec.ts';
import { TextInput } from '../../../components/text-input.tsx';
import type { FieldError } from '../../../lib/api-problem.ts';
import '../../../components/save-notice.css';
import './design.css';

interface SaveDesignProps {
  /** The revision it will become. */
  readonly revision: number;
  readonly note: string;
  readonly onNote: (note: string) => void;
  /** Cells that cannot be read or name nothing that is there. */
  readonly toMend: number;
  readonly undo: GridUndo;
  /** The changes were made before this page was opened. */
  readonly isBroughtBack: boolean;
  readonly isPending: boolean;
  readonly error: Error | null;
  /** What no field shows of the error. */
  readonly unplaced: readonly FieldError[];
  readonly onSave: () => void;
  readonly onDrop: () => void;
  /** Where mine and what somebody else saved meanwhile differ; null while nobody did. */
  readonly clash: readonly Difference[] | null;
  readonly onKeepMine: () => void;
}

/** Stands while something is changed and not saved. Every saving is a revision of its own. */
export function SaveDesign(props: SaveDesignProps) {
  const { revision, toMend, undo, error, clash } = props;
  return (
    <div className="save-notice">
      {props.isBroughtBack && (
        <p role="status">
          <strong>These changes were made before and not saved.</strong> They were kept in this window.
        </p>
      )}
      {clash !== null && (
        <ChangeClash differences={clash} onTakeTheirs={props.onDrop} onKeepMine={props.onKeepMine} />
      )}
      <div className="save-bar">
        <TextInput label="Changed, not saved yet. What and why" value={props.note} onChange={props.onNote} />
        <Button
          look="main"
          isPending={props.isPending}
          pendingText="Saving ..."
          isDisabled={toMend > 0 || clash !== null}
          onPress={props.onSave}
        >
          Save as revision {revision}
        </Button>
        <span className="save-step">
          {undo.canUndo && <Button onPress={undo.undo}>Undo</Button>}{' '}
          {undo.canRedo && <Button onPress={undo.redo}>Redo</Button>}
        </span>
        <Button onPress={props.onDrop}>Drop changes</Button>
      </div>
      {toMend > 0 && (
        <p className="field-error">
          {toMend === 1 ? 'One cell is' : `${toMend} cells are`} to mend before it can be saved; it is marked
          red.
        </p>
      )}
      {error !== null && clash === null && <ErrorNotice error={error} errors={props.unplaced} />}
    </div>
  );
}
