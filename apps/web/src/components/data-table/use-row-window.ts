import { useVirtualizer } from '@tanstack/react-virtual';
import type { RefObject } from 'react';

const DRAWN_WHOLE = 100;

/** px; the two row heights of styles/tokens.css. */
function rowHeight(): number {
  return matchMedia('(pointer: coarse)').matches ? 40 : 30;
}

export interface RowWindow {
  /** Whether only the rows in view are drawn. */
  readonly isWindowed: boolean;
  /** The drawn rows: from `first` up to, not including, `end`. */
  readonly first: number;
  readonly end: number;
  /** Height in px of what is not drawn above and below. */
  readonly above: number;
  readonly below: number;
  /** Scrolls a row into the drawn window. */
  readonly reveal: (row: number) => void;
}

/** Which of many rows are drawn. Up to a hundred rows all are, so that the page can scroll and be searched. */
export function useRowWindow(count: number, frame: RefObject<HTMLElement | null>): RowWindow {
  const isWindowed = count > DRAWN_WHOLE;
  const virtualizer = useVirtualizer({
    count,
    getScrollElement: () => frame.current,
    estimateSize: rowHeight,
    overscan: 8,
    enabled: isWindowed,
  });
  const reveal = (row: number): void => {
    if (isWindowed) virtualizer.scrollToIndex(row);
  };
  if (!isWindowed) return { isWindowed, first: 0, end: count, above: 0, below: 0, reveal };
  const drawn = virtualizer.getVirtualItems();
  return {
    isWindowed,
    first: drawn[0]?.index ?? 0,
    end: (drawn.at(-1)?.index ?? -1) + 1,
    above: drawn[0]?.start ?? 0,
    below: virtualizer.getTotalSize() - (drawn.at(-1)?.end ?? 0),
    reveal,
  };
}
