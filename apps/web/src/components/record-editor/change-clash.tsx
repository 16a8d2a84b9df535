import { Button } from '../button.tsx';
import type { Difference } from './field-spec.ts';
import './record-editor.css';
import '../notices.css';

interface ChangeClashProps {
  readonly differences: readonly Difference[];
  readonly onTakeTheirs: () => void;
  readonly onKeepMine: () => void;
}

/** Somebody saved between reading and saving: both versions, and the choice between them. */
export function ChangeClash({ differences, onTakeTheirs, onKeepMine }: ChangeClashProps) {
  return (
    <div role="alert" className="stale-notice">
      <p>
        <strong>Somebody changed this meanwhile.</strong> Nothing was overwritten. Here is where both versions
        differ.
      </p>
      {differences.length === 0 ? (
        <p>They say the same; save again.</p>
      ) : (
        <table className="differences">
          <thead>
            <tr>
              <th scope="col">Field</th>
              <th scope="col">Yours</th>
              <th scope="col">Saved meanwhile</th>
            </tr>
          </thead>
          <tbody>
            {differences.map((one) => (
              <tr key={one.label}>
                <th scope="row">{one.label}</th>
                <td>{one.mine}</td>
                <td>{one.theirs}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <div className="form-acts">
        <Button onPress={onTakeTheirs}>Take what was saved</Button>
        <Button onPress={onKeepMine}>Keep mine, to save over it</Button>
      </div>
    </div>
  );
}
