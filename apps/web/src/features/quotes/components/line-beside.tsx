import { useEffect, useRef } from 'react';
import { Button } from '../../../components/button.tsx';
import type { FieldMessage } from '../../../components/field.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { cell, type LineForm, type Pictures } from './line-cells.ts';
import { PicturesField } from './pictures-field.tsx';
import './quote.css';

interface LineBesideProps {
  readonly line: LineForm;
  readonly onDetails: (details: string) => void;
  readonly onPictures: (pictures: Pictures) => void;
  readonly onClose: () => void;
  readonly error: FieldMessage | undefined;
}

/** What of a line fits in no cell: more words for the client, and pictures. */
export function LineBeside({ line, onDetails, onPictures, onClose, error }: LineBesideProps) {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    const cameFrom = document.activeElement;
    form.current?.querySelector('textarea')?.focus();
    return () => {
      if (cameFrom instanceof HTMLElement && cameFrom.isConnected) cameFrom.focus();
    };
  }, []);
  return (
    <form
      ref={form}
      className="line-beside"
      aria-label={`Words and pictures of ${cell(line, 'description') || 'the line'}`}
      onSubmit={(event) => {
        event.preventDefault();
        onClose();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && !event.defaultPrevented) onClose();
      }}
    >
      <h3>{cell(line, 'description') || 'Unnamed line'}</h3>
      <TextInput
        label="More about it"
        hint="Stands below the line on the offer: wood, sizes, finish"
        isMultiline
        value={cell(line, 'details')}
        onChange={onDetails}
        error={error}
      />
      <PicturesField label="Pictures of this line" pictures={line.pictures} onChange={onPictures} />
      <div>
        <Button type="submit">Close</Button>
      </div>
    </form>
  );
}
