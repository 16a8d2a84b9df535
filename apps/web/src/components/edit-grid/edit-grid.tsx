import { useRef, useState } from 'react';
import { fromTabSeparated } from '../../lib/tab-separated.ts';
import { copyArea } from '../data-table/copy-area.ts';
import type { GridPosition } from '../data-table/grid-position.ts';
import { Gap } from '../data-table/table-rows.tsx';
import { useGridFocus } from '../data-table/use-grid-focus.ts';
import { useRowWindow } from '../data-table/use-row-window.ts';
import type { FieldMessage } from '../field.tsx';
import { CellEditor } from './cell-editor.tsx';
import { type CellAside, columnIn, type EditColumn, type GridRow, shownText } from './edit-column.ts';
import { EditHead, EditRow } from './edit-rows.tsx';
import { type GridUndo, gridEdits } from './grid-edits.ts';
import { GridFoot } from './grid-foot.tsx';
import { useOpenCell } from './use-open-cell.ts';
import { useRowDrag } from './use-row-drag.ts';
import '../data-table/data-table.css';
import '../choice-list.css';
import './edit-grid.css';

// A table may be a grid (ARIA in HTML, "table"), which the linter's own list does not know.
const GRID = { role: 'grid', 'aria-multiselectable': true } as const;

export interface EditGridProps {
  /** Names the grid. */
  readonly label: string;
  /** "part": one row, in "New part". */
  readonly one: string;
  /** The first column names the row and is held. */
  readonly columns: readonly EditColumn[];
  readonly rows: readonly GridRow[];
  readonly onRows: (rows: readonly GridRow[]) => void;
  /** A new row, or a copy of one under a key of its own. */
  readonly freshRow: (from?: GridRow) => GridRow;
  readonly errorAt: (row: GridRow, column: string) => FieldMessage | undefined;
  readonly asideAt?: (row: GridRow, column: string) => CellAside | undefined;
  readonly undo: GridUndo;
  readonly isReadOnly?: boolean;
  /** Rows can be dragged by a handle; for lists whose order others see. */
  readonly hasHandles?: boolean;
  /** Opens the form of one row. */
  readonly onDetails?: (row: GridRow) => void;
}

function widthOf(columns: readonly EditColumn[]): string {
  const [first, ...others] = columns.map(({ width }) => width);
  return `calc(${others.reduce((sum, width) => sum + width, 0)}px + min(${first ?? 0}px, 38vw))`;
}

/** A table that is filled in like a spreadsheet; keys after the grid pattern of the ARIA practices. */
export function EditGrid(props: EditGridProps) {
  const { columns, rows, isReadOnly = false } = props;
  const frame = useRef<HTMLDivElement>(null);
  const tableRef = useRef<HTMLTableElement>(null);
  const [isActive, setIsActive] = useState(false);
  const [said, setSaid] = useState('');
  const count = rows.length + (isReadOnly ? 0 : 1);
  const { first, end, above, below, reveal } = useRowWindow(count, frame);
  const grid = useGridFocus(tableRef, { rows: count, columns: columns.length }, reveal);
  const { position } = grid;
  const here = rows[position.row];
  const found = columns[position.column];
  const column = found && columnIn(found, here);
  const edits = gridEdits({
    rows,
    columns,
    position,
    area: grid.area,
    goTo: grid.goTo,
    onRows: props.onRows,
    freshRow: props.freshRow,
    undo: props.undo,
    say: setSaid,
  });

  const cell = useOpenCell({
    rows,
    columns,
    count,
    goTo: grid.goTo,
    put: edits.put,
    toggle: edits.toggle,
    onDetails: props.onDetails,
  });
  const { open } = cell;
  /** What a key does to the rows; false for keys that only move. */
  const edit = (event: React.KeyboardEvent): boolean => {
    const isPlain = !event.ctrlKey && !event.metaKey && !event.altKey;
    const isSign = event.key.length === 1 && (isPlain || event.getModifierState('AltGraph'));
    if (event.key === 'Tab') return cell.tab(position, event.shiftKey ? -1 : 1);
    if (edits.byKeys(event)) return true;
    // Keys belong to the control that such a cell holds.
    if (column?.kind === 'worked') return false;
    if (event.key === 'F2' || (event.key === 'Enter' && isPlain)) cell.begin(position);
    else if (isPlain && (event.key === 'Delete' || event.key === 'Backspace')) edits.clear();
    else if (event.key === ' ' && column?.kind === 'yes-no') edits.toggle();
    else if (isSign && event.key !== ' ') cell.begin(position, event.key);
    else return false;
    return true;
  };
  const onKeyDown = (event: React.KeyboardEvent): void => {
    if (!isReadOnly && edit(event)) {
      event.preventDefault();
      return;
    }
    if (event.key !== 'Shift') cell.endTabbing();
    if (event.key === 'Escape' && grid.hasSelection) grid.goTo(position);
    else grid.handlers.onKeyDown(event);
  };
  const isEditing = (target: EventTarget): boolean => target instanceof HTMLInputElement;
  const copy = (event: React.ClipboardEvent): boolean => {
    if (isEditing(event.target)) return false;
    copyArea(event, grid.area, (row, at) => {
      const [copied, shown] = [rows[row], columns[at]];
      return copied && shown && shownText(copied, shown);
    });
    return true;
  };
  const placeOf = (target: EventTarget): GridPosition | null => {
    const cell = target instanceof Element ? target.closest<HTMLElement>('[data-row][data-column]') : null;
    return cell && { row: Number(cell.dataset.row), column: Number(cell.dataset.column) };
  };
  const drag = useRowDrag(edits.moveTo);
  const openRow = open ? rows[open.row] : undefined;
  const opened = open && columns[open.column];
  const openColumn = opened && columnIn(opened, openRow);
  const rowName = openRow && columns[0] ? shownText(openRow, columns[0]) : `new ${props.one}`;
  const editor = open && openColumn && (
    <CellEditor
      column={openColumn}
      text={open.text}
      isTyped={open.isTyped}
      label={`${openColumn.header}, ${rowName}`}
      onText={cell.setText}
      onTake={cell.take}
      onLeave={cell.leave}
    />
  );

  return (
    <fieldset
      className="edit-frame"
      aria-label={`${props.label}, ${rows.length} ${rows.length === 1 ? 'row' : 'rows'}`}
      onFocus={() => setIsActive(true)}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) setIsActive(false);
      }}
    >
      <div ref={frame} className="data-frame edit-scroll">
        <table
          ref={tableRef}
          {...GRID}
          {...(isReadOnly ? { 'aria-readonly': true } : {})}
          aria-label={props.label}
          aria-rowcount={count + 1}
          aria-colcount={columns.length}
          className="data-table edit-grid"
          style={{ width: widthOf(columns) }}
          onFocus={grid.handlers.onFocus}
          onKeyDown={onKeyDown}
          onCopy={copy}
          onCut={(event) => {
            if (copy(event) && !isReadOnly) edits.clear();
          }}
          onPaste={(event) => {
            if (isReadOnly || isEditing(event.target) || position.row < 0) return;
            event.preventDefault();
            edits.paste(fromTabSeparated(event.clipboardData.getData('text/plain')));
          }}
          onMouseDown={(event) => {
            const at = placeOf(event.target);
            if (!event.shiftKey || at === null || isEditing(event.target)) return;
            event.preventDefault();
            grid.goTo(at, true);
          }}
          onMouseOver={(event) => {
            const at = placeOf(event.target);
            if (event.buttons === 1 && at !== null && open === null && at.row >= 0) grid.goTo(at, true);
          }}
          onDoubleClick={() => {
            if (!isReadOnly) cell.begin(position);
          }}
          onClick={(event) => {
            const at = placeOf(event.target);
            const isTap = matchMedia('(pointer: coarse)').matches;
            if (isTap && !isReadOnly && at !== null && !isEditing(event.target)) cell.begin(at);
          }}
        >
          <colgroup>
            {columns.map(({ id, width }, at) => (
              <col key={id} style={{ width: at === 0 ? `min(${width}px, 38vw)` : width }} />
            ))}
          </colgroup>
          <thead>
            <EditHead columns={columns} />
          </thead>
          <Gap height={above} />
          <tbody>
            {Array.from({ length: end - first }, (_, offset) => {
              const index = first + offset;
              const row = rows[index];
              return (
                <EditRow
                  key={row?.key ?? 'new'}
                  row={row}
                  index={index}
                  columns={columns}
                  area={grid.hasSelection ? grid.area : null}
                  focused={isActive && index === position.row ? position.column : null}
                  errorAt={props.errorAt}
                  asideAt={props.asideAt}
                  newText={`New ${props.one}`}
                  open={open?.row === index ? { column: open.column, editor } : null}
                  drag={row && props.hasHandles && !isReadOnly ? drag.of(index) : null}
                />
              );
            })}
          </tbody>
          <Gap height={below} />
        </table>
      </div>
      <GridFoot
        acts={isActive && !isReadOnly ? edits.acts : []}
        label={props.label}
        said={said}
        rows={rows}
        columns={columns}
        errorAt={props.errorAt}
        here={isActive && here && column ? { row: here, column } : null}
        onGoTo={grid.goTo}
      />
    </fieldset>
  );
}
