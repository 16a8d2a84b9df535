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
  /** `onFile` is called for each of several; of several the first is taken otherwise. */
  readonly takesSeveral?: boolean;
  /** A larger file is refused here, before it is sent. */
  readonly mostBytes?: number;
  readonly hint?: string;
  readonly error?: FieldMessage | undefined;
  readonly isDisabled?: boolean;
}

const MEGABYTE = 1024 * 1024;

/** Files that are dropped, pasted or chosen. One of another kind, or too large, is refused here, by name. */
export function FileDrop(props: FileDropProps) {
  const { label, endings, onFile, hint, error, isDisabled = false, takesSeveral = false, mostBytes } = props;
  const [refused, setRefused] = useState<readonly FieldMessage[]>([]);
  const problemOf = ({ name, size }: File): FieldMessage | undefined => {
    if (!endings.some((ending) => name.toLowerCase().endsWith(ending)))
      return {
        message: `"${name}" is of another kind.`,
        mend: `Bring a file ending in ${endings.join(' or ')}.`,
      };
    if (mostBytes !== undefined && size > mostBytes)
      return {
        message: `"${name}" is too large.`,
        mend: `Bring one of at most ${Math.floor(mostBytes / MEGABYTE)} MB; make it smaller first.`,
      };
    return undefined;
  };
  const take = (files: readonly File[]): void => {
    const brought = takesSeveral ? files : files.slice(0, 1);
    setRefused(brought.flatMap((file) => problemOf(file) ?? []));
    for (const file of brought) if (problemOf(file) === undefined) onFile(file);
  };
  const shown = refused.length > 0 ? refused : error ? [error] : [];
  return (
    <div
      className="file-drop-field"
      onPaste={(event) => {
        // The component library takes copied files, but no copied image: that one is no file of any folder.
        if (isDisabled || event.clipboardData.files.length === 0) return;
        event.preventDefault();
        event.stopPropagation();
        take([...event.clipboardData.files]);
      }}
    >
      <DropZone
        className="file-drop"
        isDisabled={isDisabled}
        onDrop={async ({ items }) =>
          take(await Promise.all(items.filter(isFileDropItem).map((item) => item.getFile())))
        }
      >
        <Text slot="label">{label}</Text>
        <FileTrigger
          acceptedFileTypes={endings}
          allowsMultiple={takesSeveral}
          onSelect={(files) => take([...(files ?? [])])}
        >
          <Button className="button button-plain" isDisabled={isDisabled}>
            {takesSeveral ? 'Choose files' : 'Choose a file'}
          </Button>
        </FileTrigger>
        <span className="file-drop-hint">
          or drop {takesSeveral ? 'them' : 'it'} here{hint === undefined ? '' : `. ${hint}`}
        </span>
      </DropZone>
      {shown.map(({ message, mend }) => (
        <p key={message} role="alert" className="field-error">
          <strong>{message}</strong> {mend}
        </p>
      ))}
    </div>
  );
}
