import type { RefObject } from 'react';
import { createPortal } from 'react-dom';
import { usePlaceBelow } from './use-place-below.ts';
import './edit-grid.css';

/** Pressing on it must not take the focus out of the cell, which would end the editing. */
function keepFocus(element: HTMLElement | null): void {
  element?.addEventListener('mousedown', (event) => event.preventDefault());
}

interface CellHangingProps {
  /** Something inside the cell. */
  readonly anchor: RefObject<HTMLElement | null>;
  readonly children: React.ReactNode;
}

/** Hangs below the cell that is edited: its choices, or how its text is read. */
export function CellHanging({ anchor, children }: CellHangingProps) {
  const place = usePlaceBelow(anchor);
  if (place === null) return null;
  const { top, left, minWidth, room, isAbove } = place;
  return createPortal(
    <div
      ref={keepFocus}
      className="cell-hanging"
      style={{ left, minWidth, maxHeight: Math.min(room, 320), ...(isAbove ? { bottom: top } : { top }) }}
    >
      {children}
    </div>,
    document.body,
  );
}
