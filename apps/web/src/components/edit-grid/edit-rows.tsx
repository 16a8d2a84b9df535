import { type ReactNode, useRef } from 'react';
import { cellMarks } from '../data-table/cell-marks.ts';
import type { GridArea } from '../data-table/grid-position.ts';
import type { FieldMessage } from '../field.tsx';
import { CellHanging } from './cell-hanging.tsx';
import { type CellAside, columnIn, type EditColumn, type GridRow, shownText } from './edit-column.ts';
import type { RowDrag } from './use-row-drag.ts';
import './edit-grid.css';

export function EditHead({ columns }: { readonly columns: readonly EditColumn[] }) {
  return (
    <tr aria-rowindex={1}>
      {columns.map((column, at) => (
        <th
          key={column.id}
          scope="col"
          data-row={-1}
          data-column={at}
          data-is-numeric={column.isNumeric ? '' : undefined}
        >
          {column.header}
        </th>
      ))}
    </tr>
  );
}

interface EditRowProps {
  /** Absent: the empty row at the end, where a new one begins. */
  readonly row: GridRow | undefined;
  readonly index: number;
  readonly columns: readonly EditColumn[];
  readonly area: GridArea | null;
  /** The column in focus, where the focus is in this row. */
  readonly focused: number | null;
  readonly errorAt: (row: GridRow, column: string) => FieldMessage | undefined;
  readonly asideAt: ((row: GridRow, column: string) => CellAside | undefined) | undefined;
  /** Words in the first cell of the empty row. */
  readonly newText: string;
  /** The editor of the cell that is open, and its column. */
  readonly open: { readonly column: number; readonly editor: ReactNode } | null;
  /** Null: the row stays where it is. */
  readonly drag: RowDrag | null;
}

export function EditRow(props: EditRowProps) {
  const { row, index, columns, area, open, drag } = props;
  return (
    <tr
      aria-rowindex={index + 2}
      data-is-current={props.focused === null ? undefined : ''}
      data-is-over={drag?.isOver ? '' : undefined}
      onDragStart={drag?.onStart}
      onDragEnd={drag?.onEnd}
      onDragOver={drag?.onOver}
      onDrop={drag?.onDrop}
    >
      {columns.map((column, at) => {
        const Cell = at === 0 ? 'th' : 'td';
        const error = row && props.errorAt(row, column.id);
        const message = error && `${row.key}-${column.id}-error`;
        const isOpen = open?.column === at;
        const aside = isOpen || !row ? undefined : props.asideAt?.(row, column.id);
        return (
          <Cell
            key={column.id}
            {...cellMarks(index, at, column, area)}
            data-is-open={isOpen ? '' : undefined}
            aria-readonly={row && columnIn(column, row).kind === 'worked' ? true : undefined}
            aria-invalid={error ? true : undefined}
            aria-describedby={message}
          >
            {at === 0 && drag && !isOpen && <span className="row-handle" draggable title="Drag the row" />}
            {isOpen
              ? open.editor
              : row
                ? cellContent(row, column, aside)
                : at === 0 && newWords(props.newText)}
            {aside && !error && props.focused === at && <AsideNote note={aside.note} />}
            {error && <CellError id={message} error={error} isShown={props.focused === at && !isOpen} />}
          </Cell>
        );
      })}
    </tr>
  );
}

function newWords(text: string): ReactNode {
  return <span className="edit-new">{text}</span>;
}

function cellContent(row: GridRow, column: EditColumn, aside: CellAside | undefined): ReactNode {
  const { render } = columnIn(column, row);
  return render ? render(row) : withAside(shownText(row, column), aside);
}

function withAside(text: string, aside: CellAside | undefined): ReactNode {
  if (aside === undefined) return text;
  return (
    <span className="cell-beside">
      <span className="cell-written">{text}</span> <span className="cell-aside">{aside.text}</span>
    </span>
  );
}

function AsideNote({ note }: { readonly note: string }) {
  const anchor = useRef<HTMLSpanElement>(null);
  return (
    <>
      <span ref={anchor} hidden />
      <CellHanging anchor={anchor}>
        <p className="cell-reading">{note}</p>
      </CellHanging>
    </>
  );
}

interface CellErrorProps {
  readonly id: string | undefined;
  readonly error: FieldMessage;
  /** Hangs below its cell; else it is only there to be read out. */
  readonly isShown: boolean;
}

function CellError({ id, error, isShown }: CellErrorProps) {
  const anchor = useRef<HTMLSpanElement>(null);
  return (
    <>
      <span ref={anchor} id={id} hidden>
        {error.message} {error.mend}
      </span>
      {isShown && (
        <CellHanging anchor={anchor}>
          <p className="cell-reading" data-is-error="" aria-hidden="true">
            <strong>{error.message}</strong> {error.mend}
          </p>
        </CellHanging>
      )}
    </>
  );
}
