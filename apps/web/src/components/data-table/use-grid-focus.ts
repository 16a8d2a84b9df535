import { type RefObject, useLayoutEffect, useRef, useState } from 'react';
import { areaBetween, type GridArea, type GridPosition, type GridSize, moved } from './grid-position.ts';

const CONTROLS = 'button, a[href], input, select, textarea';

function positionOf(target: EventTarget): GridPosition | null {
  if (!(target instanceof Element)) return null;
  const cell = target.closest<HTMLElement>('[data-row][data-column]');
  if (!cell) return null;
  return { row: Number(cell.dataset.row), column: Number(cell.dataset.column) };
}

function isTyping(target: EventTarget): boolean {
  return (
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement && target.type !== 'checkbox' && target.type !== 'radio')
  );
}

export interface GridFocus {
  readonly position: GridPosition;
  /** The selected cells; the cell in focus alone where no more are selected. */
  readonly area: GridArea;
  readonly hasSelection: boolean;
  /** Moves the focus, with the selection stretched to there or given up. */
  readonly goTo: (to: GridPosition, isStretching?: boolean) => void;
  readonly handlers: {
    readonly onKeyDown: (event: React.KeyboardEvent) => void;
    readonly onFocus: (event: React.FocusEvent) => void;
  };
}

/**
 * One stop for Tab in a whole grid, arrows inside it (APG grid pattern). A cell with a control gives the focus to
 * the control. `reveal` scrolls a row into the drawn window, after which the cell exists and can be focused.
 */
export function useGridFocus(
  table: RefObject<HTMLTableElement | null>,
  size: GridSize,
  reveal: (row: number) => void,
): GridFocus {
  const [position, setPosition] = useState<GridPosition>({ row: 0, column: 0 });
  const [anchor, setAnchor] = useState<GridPosition | null>(null);
  const isFocusDue = useRef(false);
  const at = {
    row: Math.min(position.row, size.rows - 1),
    column: Math.min(position.column, size.columns - 1),
  };

  // Without dependencies: rows come and go with scrolling, and each new one must leave the Tab order.
  useLayoutEffect(() => {
    for (const cell of table.current?.querySelectorAll<HTMLElement>('[data-row][data-column]') ?? []) {
      const isHere = cell.dataset.row === String(at.row) && cell.dataset.column === String(at.column);
      const controls = [...cell.querySelectorAll<HTMLElement>(CONTROLS)];
      for (const control of controls) control.tabIndex = isHere ? 0 : -1;
      cell.tabIndex = isHere && controls.length === 0 ? 0 : -1;
      if (isHere && isFocusDue.current) {
        isFocusDue.current = false;
        (controls[0] ?? cell).focus();
      }
    }
  });

  const goTo = (to: GridPosition, isStretching = false): void => {
    isFocusDue.current = true;
    setAnchor(isStretching ? (anchor ?? at) : null);
    setPosition(to);
    if (to.row >= 0) reveal(to.row);
  };
  return {
    position: at,
    area: areaBetween(anchor ?? at, at),
    hasSelection: anchor !== null,
    goTo,
    handlers: {
      onKeyDown: (event) => {
        if (isTyping(event.target)) return;
        const isControl = event.ctrlKey || event.metaKey;
        if (isControl && event.key.toLowerCase() === 'a' && size.rows > 0) {
          event.preventDefault();
          setAnchor({ row: 0, column: 0 });
          setPosition({ row: size.rows - 1, column: size.columns - 1 });
          return;
        }
        const next = moved(at, event.key, isControl, size);
        if (!next) return;
        event.preventDefault();
        goTo(next, event.shiftKey);
      },
      onFocus: (event) => {
        const here = positionOf(event.target);
        if (!here || (here.row === at.row && here.column === at.column)) return;
        setPosition(here);
        setAnchor(null);
      },
    },
  };
}
