import { useState } from 'react';
import { fromTabSeparated } from '../lib/tab-separated.ts';
import { Button } from './button.tsx';
import { TextInput } from './text-input.tsx';
import './file-drop.css';

export interface PasteAreaProps {
  readonly label: string;
  readonly hint?: string;
  /** The cells, row by row, as they were in the spreadsheet. */
  readonly onCells: (cells: string[][]) => void;
  /** Words on the button ("Read the rows"). */
  readonly actText: string;
}

/** Rows pasted out of a spreadsheet. They can be looked over and changed before they are taken. */
export function PasteArea({ label, hint, onCells, actText }: PasteAreaProps) {
  const [text, setText] = useState('');
  const cells = fromTabSeparated(text);
  const columns = Math.max(0, ...cells.map((row) => row.length));
  return (
    <div className="paste-area">
      <TextInput label={label} hint={hint} value={text} onChange={setText} isMultiline spellCheck="false" />
      <div className="paste-foot">
        <Button
          isDisabled={cells.length === 0}
          onPress={() => {
            onCells(cells);
            setText('');
          }}
        >
          {actText}
        </Button>
        <span role="status">
          {cells.length === 0 ? 'Paste rows first' : `${cells.length} rows of ${columns} columns`}
        </span>
      </div>
    </div>
  );
}
