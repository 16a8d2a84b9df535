import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { ChangeClash } from '../../../components/record-editor/change-clash.tsx';
import type { Difference } from '../../../components/record-editor/field-spec.ts';
import '../../../components/save-notice.css';
import '../../../components/field.css';

interface SaveQuoteProps {
  /** The changes were made before this page was opened. */
  readonly isBroughtBack: boolean;
  /** How many cells and fields. */
  readonly toMend: number;
  readonly isPending: boolean;
  readonly error: Error | null;
  /** Where mine and what somebody else saved meanwhile differ; null while nobody did. */
  readonly clash: readonly Difference[] | null;
  readonly onSave: () => void;
  readonly onDrop: () => void;
  readonly onKeepMine: () => void;
}

/** Stands while something is changed and not saved. */
export function SaveQuote(props: SaveQuoteProps) {
  const { toMend, error, clash } = props;
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
        <p>Changed, not saved yet.</p>
        <Button
          look="main"
          isPending={props.isPending}
          pendingText="Saving ..."
          isDisabled={toMend > 0 || clash !== null}
          onPress={props.onSave}
        >
          Save the draft
        </Button>
        <Button onPress={props.onDrop}>Drop changes</Button>
      </div>
      {toMend > 0 && (
        <p className="field-error">
          {toMend === 1 ? 'One field is' : `${toMend} fields are`} to mend before it can be saved.
        </p>
      )}
      {error !== null && clash === null && <ErrorNotice error={error} />}
    </div>
  );
}
