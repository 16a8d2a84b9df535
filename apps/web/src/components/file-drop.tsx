import { useState } from 'react';
import { Button, DropZone, FileTrigger, isFileDropItem, Text } from 'react-aria-components';
import type { FieldMessage } from './field.tsx';
import './file-drop.css';
import './button.css';
import './field.css';

export interface FileDropProps {
  /** What to bring ("Price list as CSV or XLSX"). */
  readonly label: string;
  /** Endings with their dot, as the file chooser filters them (".csv"). */
  readonly endings: readonly string[];
  readonly onFile: (file: File) => void;
  readonly hint?: string;
  readonly error?: FieldMessage | undefined;
  readonly isDisabled?: boolean;
}

/** One file, dropped, pasted or chosen. A file of another kind is refused here, by name. */
export function FileDrop({ label, endings, onFile, hint, error, isDisabled = false }: FileDropProps) {
  const [refused, setRefused] = useState<FieldMessage>();
  const take = (file: File): void => {
    const isFit = endings.some((ending) => file.name.toLowerCase().endsWith(ending));
    setRefused(
      isFit
        ? undefined
        : {
            message: `"${file.name}" is of another kind.`,
            mend: `Bring a file ending in ${endings.join(' or ')}.`,
          },
    );
    if (isFit) onFile(file);
  };
  const shown = refused ?? error;
  return (
    <div className="file-drop-field">
      <DropZone
        className="file-drop"
        isDisabled={isDisabled}
        onDrop={async ({ items }) => {
          const item = items.find(isFileDropItem);
          if (item) take(await item.getFile());
        }}
      >
        <Text slot="label">{label}</Text>
        <FileTrigger
          acceptedFileTypes={endings}
          onSelect={(files) => {
            const file = files?.[0];
            if (file) take(file);
          }}
        >
          <Button className="button button-plain" isDisabled={isDisabled}>
            Choose a file
          </Button>
        </FileTrigger>
        <span className="file-drop-hint">or drop it here{hint === undefined ? '' : `. ${hint}`}</span>
      </DropZone>
      {shown && (
        <p role="alert" className="field-error">
          <strong>{shown.message}</strong> {shown.mend}
        </p>
      )}
    </div>
  );
}
