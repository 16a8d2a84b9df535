import { useEffect, useId, useRef, useState } from 'react';
import type { Choice } from '../choice-list.tsx';
import { MOST_SHOWN, offered, withChoice, wordIn } from './cell-choices.ts';
import { CellHanging } from './cell-hanging.tsx';
import type { EditColumn } from './edit-column.ts';
import './edit-grid.css';
import '../choice-list.css';

/** Where the focus goes when an edit is taken. */
export type AfterEdit = 'down' | 'up' | 'next' | 'before' | 'stay';

interface CellEditorProps {
  readonly column: EditColumn;
  /** What is typed so far. */
  readonly text: string;
  /** Whether it is what was typed into the cell, and no longer what stood there. */
  readonly isTyped: boolean;
  readonly label: string;
  readonly onText: (text: string) => void;
  readonly onTake: (text: string, then: AfterEdit) => void;
  readonly onLeave: () => void;
}

function ReadingNote({ column, text, id }: { column: EditColumn; text: string; id: string }) {
  const reading = text.trim() === '' ? null : column.read(text.trim());
  if (reading === null) return null;
  if ('error' in reading) {
    return (
      <p id={id} className="cell-reading" data-is-error="">
        {reading.error.message} {reading.error.mend}
      </p>
    );
  }
  if (reading.note === undefined) return null;
  return (
    <p id={id} className="cell-reading">
      {reading.note}
    </p>
  );
}

interface CellChoicesProps {
  readonly id: string;
  readonly shown: readonly Choice[];
  readonly total: number;
  readonly active: number;
  readonly onChoose: (choice: Choice) => void;
}

function CellChoices({ id, shown, total, active, onChoose }: CellChoicesProps) {
  return (
    <>
      <div id={id} role="listbox" aria-label="Choices" className="choice-list">
        {shown.map((choice, at) => (
          <div
            key={choice.id}
            id={`${id}-${at}`}
            role="option"
            tabIndex={-1}
            aria-selected={at === active}
            className="choice"
            data-focused={at === active ? '' : undefined}
            onPointerUp={() => onChoose(choice)}
          >
            <span className="choice-label">{choice.label}</span>
            {choice.note !== undefined && <span className="choice-note">{choice.note}</span>}
          </div>
        ))}
      </div>
      {total === 0 && <p className="choice-none">Nothing fits</p>}
      {total > shown.length && <p className="choice-none">{total - shown.length} more; type to find</p>}
    </>
  );
}

/** The open cell: a text with how it is read, or a text that finds one of many. */
export function CellEditor({ column, text, isTyped, label, onText, onTake, onLeave }: CellEditorProps) {
  const input = useRef<HTMLInputElement>(null);
  const isDone = useRef(false);
  const startsAnew = useRef(!isTyped);
  const hanging = useId();
  const choices = offered(column, text, isTyped);
  const shown = choices.slice(0, MOST_SHOWN);
  // Nothing is chosen for an empty text: it clears the cell.
  const first = isTyped && wordIn(column, text) !== '' && shown.length > 0 ? 0 : -1;
  const [pointed, setPointed] = useState<number | null>(null);
  const active = pointed ?? first;
  useEffect(() => {
    input.current?.focus();
    if (startsAnew.current) input.current?.select();
  }, []);
  useEffect(() => {
    if (active >= 0) document.getElementById(`${hanging}-${active}`)?.scrollIntoView({ block: 'nearest' });
  }, [active, hanging]);

  const take = (then: AfterEdit, chosen: Choice | undefined): void => {
    if (isDone.current) return;
    isDone.current = true;
    onTake(chosen ? withChoice(column, text, chosen) : text, then);
  };
  const point = (by: 1 | -1): void => {
    if (shown.length > 0) setPointed((active + by + shown.length) % shown.length);
  };
  const hasChoices = column.choices !== undefined;
  const note = <ReadingNote column={column} text={text} id={hanging} />;
  return (
    <>
      <input
        ref={input}
        className="cell-input"
        value={text}
        aria-label={label}
        data-is-numeric={column.isNumeric ? '' : undefined}
        autoComplete="off"
        spellCheck="false"
        {...(hasChoices
          ? {
              role: 'combobox',
              'aria-expanded': true,
              'aria-controls': hanging,
              'aria-autocomplete': 'list' as const,
              'aria-activedescendant': active < 0 ? undefined : `${hanging}-${active}`,
            }
          : { 'aria-describedby': hanging })}
        onChange={(event) => {
          setPointed(null);
          onText(event.target.value);
        }}
        // Who goes elsewhere has pressed no key to take what is merely offered.
        onBlur={() => take('stay', pointed === null ? undefined : shown[pointed])}
        onKeyDown={(event) => {
          event.stopPropagation();
          const key = event.key;
          if (key === 'Escape') {
            isDone.current = true;
            onLeave();
          } else if (key === 'Enter') take(event.shiftKey ? 'up' : 'down', shown[active]);
          else if (key === 'Tab') take(event.shiftKey ? 'before' : 'next', shown[active]);
          else if (hasChoices && (key === 'ArrowDown' || key === 'ArrowUp'))
            point(key === 'ArrowDown' ? 1 : -1);
          else return;
          event.preventDefault();
        }}
      />
      <CellHanging anchor={input}>
        {hasChoices ? (
          <CellChoices
            id={hanging}
            shown={shown}
            total={choices.length}
            active={active}
            onChoose={(choice) => {
              const next = withChoice(column, text, choice);
              if (column.kind === 'choices') {
                setPointed(null);
                onText(next);
                return;
              }
              isDone.current = true;
              onTake(next, 'down');
            }}
          />
        ) : (
          note
        )}
      </CellHanging>
    </>
  );
}
