/** Cells as spreadsheets exchange them: tabs between, quotes where a cell holds a tab, a break or a quote. */
export function toTabSeparated(rows: readonly (readonly string[])[]): string {
  return rows
    .map((cells) =>
      cells.map((cell) => (/[\t\r\n"]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join('\t'),
    )
    .join('\n');
}

/** The reverse, for what is pasted out of a spreadsheet; a last empty line is no row. */
export function fromTabSeparated(text: string): string[][] {
  const rows: string[][] = [];
  let cells: string[] = [];
  let cell = '';
  let isQuoted = false;
  let at = 0;
  const endCell = (): void => {
    cells.push(cell);
    cell = '';
  };
  const endRow = (): void => {
    endCell();
    rows.push(cells);
    cells = [];
  };
  while (at < text.length) {
    const sign = text.charAt(at);
    if (isQuoted) {
      if (sign !== '"') cell += sign;
      else if (text.charAt(at + 1) === '"') {
        cell += '"';
        at += 1;
      } else isQuoted = false;
    } else if (sign === '"' && cell === '') isQuoted = true;
    else if (sign === '\t') endCell();
    else if (sign === '\n') endRow();
    else if (sign !== '\r') cell += sign;
    at += 1;
  }
  if (cell !== '' || cells.length > 0) endRow();
  return rows;
}
