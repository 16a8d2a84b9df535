import { Button } from '../button.tsx';
import type { GridPosition } from '../data-table/grid-position.ts';
import type { FieldMessage } from '../field.tsx';
import { type EditColumn, type GridRow, shownText } from './edit-column.ts';

interface GridFootProps {
  /** What the last act did. */
  readonly said: string;
  readonly rows: readonly GridRow[];
  readonly columns: readonly EditColumn[];
  readonly errorAt: (row: GridRow, column: string) => FieldMessage | undefined;
  /** The cell in focus. */
  readonly here: { readonly row: GridRow; readonly column: EditColumn } | null;
  readonly onGoTo: (to: GridPosition) => void;
}

/** Below the grid: what is wrong with the cell in focus, how much is to mend, what was done. */
export function GridFoot({ said, rows, columns, errorAt, here, onGoTo }: GridFootProps) {
  const wrong = rows.flatMap((row, at) =>
    columns.flatMap((column, along) =>
      errorAt(row, column.id) ? [{ row: at, column: along, key: row.key, id: column.id }] : [],
    ),
  );
  const error = here && errorAt(here.row, here.column.id);
  const next =
    here === null ? -1 : wrong.findIndex(({ key, id }) => key === here.row.key && id === here.column.id);
  const target = wrong[(next + 1) % Math.max(1, wrong.length)];
  return (
    <div className="edit-foot">
      {target !== undefined && (
        <Button look="quiet" onPress={() => onGoTo(target)}>
          {wrong.length} to mend, go to {next < 0 ? 'the first' : 'the next'}
        </Button>
      )}
      {error && here && (
        <p className="field-error">
          <strong>
            {here.column.header} of {shownText(here.row, columns[0] ?? here.column) || 'this row'}:{' '}
            {error.message}
          </strong>{' '}
          {error.mend}
        </p>
      )}
      <p role="status" className={error ? 'visually-hidden' : 'field-hint'}>
        {said}
      </p>
    </div>
  );
}
