import { toTabSeparated } from '../../lib/tab-separated.ts';
import type { GridArea } from './grid-position.ts';

/** Puts the cells of an area on the clipboard, tab-separated. `textAt` answers undefined for rows that are not there. */
export function copyArea(
  event: React.ClipboardEvent,
  area: GridArea,
  textAt: (row: number, column: number) => string | undefined,
): void {
  const copied: string[][] = [];
  for (let row = area.top; row <= area.bottom; row += 1) {
    const cells: string[] = [];
    for (let column = area.left; column <= area.right; column += 1) {
      const text = textAt(row, column);
      if (text !== undefined) cells.push(text);
    }
    if (cells.length > 0) copied.push(cells);
  }
  event.clipboardData.setData('text/plain', toTabSeparated(copied));
  event.preventDefault();
}
