import type { GridArea, GridPosition } from '../data-table/grid-position.ts';
import { cellText, type EditColumn, type GridRow, withText } from './edit-column.ts';
import { cleared, filledDown, filledRight } from './fill-cells.ts';
import type { GridAct } from './grid-acts.tsx';
import { pasted } from './paste-block.ts';
import { duplicated, inserted, movedBy, movedTo, removed } from './row-edits.ts';

/** Steps back and forth, over whatever the screen keeps together. */
export interface GridUndo {
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly undo: () => void;
  readonly redo: () => void;
}

interface GridState {
  readonly rows: readonly GridRow[];
  readonly columns: readonly EditColumn[];
  readonly position: GridPosition;
  readonly area: GridArea;
  readonly goTo: (to: GridPosition, isStretching?: boolean) => void;
  readonly onRows: (rows: readonly GridRow[]) => void;
  readonly freshRow: (from?: GridRow) => GridRow;
  readonly undo: GridUndo;
  /** Says what was done, for those who do not see it. */
  readonly say: (words: string) => void;
}

export interface GridEdits {
  readonly put: (at: GridPosition, text: string) => void;
  readonly toggle: () => void;
  readonly clear: () => void;
  readonly paste: (block: readonly (readonly string[])[]) => void;
  /** One row to another place, as by dragging. */
  readonly moveTo: (from: number, to: number) => void;
  readonly acts: readonly GridAct[];
  /** Does what the keys stand for; false where they stand for nothing here. */
  readonly byKeys: (event: React.KeyboardEvent) => boolean;
}

const rowsIn = (count: number): string => (count === 1 ? '1 row' : `${count} rows`);

/** Everything that changes the rows of a grid, each a single step that can be undone. */
export function gridEdits(state: GridState): GridEdits {
  const { rows, columns, position, goTo, onRows, freshRow, undo, say } = state;
  const area = { ...state.area, bottom: Math.min(state.area.bottom, rows.length - 1) };
  const span = { top: area.top, bottom: area.bottom };
  const count = span.bottom - span.top + 1;
  const hasRows = count > 0;
  const { column } = position;

  const put = (at: GridPosition, text: string): void => {
    const target = columns[at.column];
    if (target === undefined) return;
    const row = rows[at.row];
    if (row === undefined && text.trim() === '') return;
    const next = withText(row ?? freshRow(), target, text);
    if (row && cellText(row, target) === cellText(next, target)) return;
    onRows(row ? rows.map((one) => (one === row ? next : one)) : [...rows, next]);
  };
  const done = (next: readonly GridRow[], words: string): void => {
    if (next === rows) return;
    onRows(next);
    say(words);
  };
  const stay = (): void => goTo(position);
  const acts = {
    undo: () => {
      undo.undo();
      say(undo.canUndo ? 'Undone.' : 'There is nothing to undo.');
      stay();
    },
    redo: () => {
      undo.redo();
      say(undo.canRedo ? 'Done again.' : 'There is nothing to do again.');
      stay();
    },
    fillDown: () => {
      done(filledDown(rows, area, columns), 'Filled down.');
      stay();
    },
    fillRight: () => {
      done(filledRight(rows, area, columns), 'Filled right.');
      stay();
    },
    insert: () => {
      done(inserted(rows, span.top, [freshRow()]), '1 row inserted.');
      goTo({ row: span.top, column: 0 });
    },
    duplicate: () => {
      done(duplicated(rows, span, freshRow), `${rowsIn(count)} duplicated.`);
      goTo({ row: span.bottom + 1, column });
    },
    up: () => {
      done(movedBy(rows, span, -1), 'Moved up.');
      goTo({ row: Math.max(0, span.top - 1), column });
    },
    down: () => {
      done(movedBy(rows, span, 1), 'Moved down.');
      goTo({ row: Math.min(rows.length - 1, span.top + 1), column });
    },
    remove: () => {
      done(removed(rows, span), `${rowsIn(count)} removed.`);
      goTo({ row: span.top, column });
    },
  };
  const onRowsHere = (act: () => void) => () => {
    if (hasRows) act();
    else say('There is no row here yet.');
  };
  const listed: readonly GridAct[] = [
    { label: 'Undo', keys: 'Control+Z', onAct: acts.undo },
    { label: 'Redo', keys: 'Control+Y', onAct: acts.redo },
    { label: 'Fill down', keys: 'Control+D', onAct: onRowsHere(acts.fillDown) },
    { label: 'Fill right', keys: 'Control+R', onAct: onRowsHere(acts.fillRight) },
    { label: 'Insert', keys: 'Control+Enter', onAct: acts.insert },
    { label: 'Duplicate', keys: 'Alt+Shift+ArrowDown', onAct: onRowsHere(acts.duplicate) },
    { label: 'Up', keys: 'Alt+ArrowUp', onAct: onRowsHere(acts.up) },
    { label: 'Down', keys: 'Alt+ArrowDown', onAct: onRowsHere(acts.down) },
    { label: 'Remove', keys: 'Control+Delete', onAct: onRowsHere(acts.remove) },
  ];
  const byKeys = (event: React.KeyboardEvent): boolean => {
    const isControl = event.ctrlKey || event.metaKey;
    const parts = [
      isControl && 'Control',
      event.altKey && 'Alt',
      event.shiftKey && 'Shift',
      event.key.length === 1 ? event.key.toUpperCase() : event.key,
    ];
    const keys = parts.filter(Boolean).join('+');
    const act = listed.find((one) => one.keys === (keys === 'Control+Shift+Z' ? 'Control+Y' : keys));
    act?.onAct();
    return act !== undefined;
  };

  return {
    put,
    toggle: () => {
      const row = rows[position.row];
      const target = columns[column];
      if (target) put(position, row && cellText(row, target) === 'yes' ? '' : 'yes');
    },
    clear: () => done(cleared(rows, area, columns), 'Cleared.'),
    paste: (block) => {
      const taken = pasted(rows, state.area, block, columns, freshRow);
      const left = taken.columnsLeftOut;
      const beyond = left === 0 ? '' : ` ${left} ${left === 1 ? 'column' : 'columns'} found no place.`;
      done(taken.rows, `${rowsIn(taken.area.bottom - taken.area.top + 1)} pasted.${beyond}`);
      goTo({ row: taken.area.top, column: taken.area.left });
    },
    moveTo: (from, to) => {
      done(movedTo(rows, from, to), `Moved to place ${to + 1}.`);
      goTo({ row: to, column: 0 });
    },
    acts: listed,
    byKeys,
  };
}
