import { text, type WorkbookRow } from '@scantling/figures';

/** What every front sheet says about itself. */
const LIVE = 'Every number is a formula: change a marked cell on the sheet Inputs, and all follows.';
const MOST_LETTERS = 120;

/** Text as rows of a readable length, since cells of a heading do not wrap. */
export function inLines(content: string): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of content.split(/\s+/)) {
    if (line !== '' && line.length + word.length >= MOST_LETTERS) {
      lines.push(line);
      line = '';
    }
    line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

export interface SheetHead {
  readonly title: string;
  /** What the numbers rest on: client, basis, date. */
  readonly facts: readonly string[];
}

/** Title and facts, and a blank row below. */
export function headRows({ title, facts }: SheetHead): WorkbookRow[] {
  return [
    [text(title, 'title')],
    ...[...facts, LIVE].flatMap(inLines).map((line) => [text(line, 'fact')]),
    [],
  ];
}

/** A row of column heads; those of columns of numbers begin with ">". */
export function columnHeads(...titles: readonly string[]): WorkbookRow {
  return titles.map((title) =>
    title.startsWith('>') ? text(title.slice(1), 'number-head') : text(title, 'column-head'),
  );
}
