import { Button } from '../button.tsx';
import type { GridPosition } from '../data-table/grid-position.ts';
import type { FieldMessage } from '../field.tsx';
import type { EditColumn, GridRow } from './edit-column.ts';
import { type GridAct, GridActs } from './grid-acts.tsx';
import './edit-grid.css';
import '../field.css';

interface GridFootProps {
  /** Shown while the grid is worked in. */
  readonly acts: readonly GridAct[];
  readonly label: string;
  /** What the last act did. */
  readonly said: string;
  readonly rows: readonly GridRow[];
  readonly columns: readonly EditColumn[];
  readonly errorAt: (row: GridRow, column: string) => FieldMessage | undefined;
  /** The cell in focus. */
  readonly here: { readonly row: GridRow; readonly column: EditColumn } | null;
  readonly onGoTo: (to: GridPosition) => void;
}

const HINT = 'Enter opens a cell, Escape leaves it, Tab goes on, Shift and arrows select.';

/** Below the grid: its acts, how much is to mend, what was done. */
export function GridFoot({ acts, label, said, rows, columns, errorAt, here, onGoTo }: GridFootProps) {
  const wrong = rows.flatMap((row, at) =>
    columns.flatMap((column, along) =>
      errorAt(row, column.id) ? [{ row: at, column: along, key: row.key, id: column.id }] : [],
    ),
  );
  const next =
    here === null ? -1 : wrong.findIndex(({ key, id }) => key === here.row.key && id === here.column.id);
  const target = wrong[(next + 1) % Math.max(1, wrong.length)];
  return (
    <div className="edit-foot">
      {acts.length > 0 && <GridActs label={`Acts on ${label}`} acts={acts} />}
      {target !== undefined && (
        <Button look="quiet" onPress={() => onGoTo(target)}>
          {wrong.length} to mend, go to {next < 0 ? 'the first' : 'the next'}
        </Button>
      )}
      <p role="status" className="field-hint">
        {said === '' && acts.length > 0 ? HINT : said}
      </p>
    </div>
  );
}
