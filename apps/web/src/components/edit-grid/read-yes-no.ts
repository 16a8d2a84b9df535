import type { CellReading } from './edit-column.ts';

const YES = ['yes', 'y', 'x', 'true', '1'];
const NO = ['no', 'n', 'false', '0', '-'];

/** How a typed or pasted text is read in a column of kind `yes-no`; no is an empty cell. */
export function readYesNo(text: string): CellReading {
  const word = text.toLowerCase();
  if (YES.includes(word)) return { text: 'yes' };
  if (NO.includes(word)) return { text: '' };
  return { error: { message: `"${text}" is neither yes nor no.`, mend: 'Write yes or no.' } };
}
