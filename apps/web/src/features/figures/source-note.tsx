import type { Source } from '@scantling/figures';
import { AddressLink } from './address-link.tsx';
import type { RecordAddress } from './record-address.ts';
import { sourceWords } from './working-words.ts';
import './working-rail.css';

interface SourceNoteProps {
  readonly source: Source | undefined;
  readonly recordAddress?: ((record: string) => RecordAddress | undefined) | undefined;
}

/** Where a leaf came from, with the way to its record. */
export function SourceNote({ source, recordAddress }: SourceNoteProps) {
  if (!source) return <p className="working-source">Its working was not sent with this page.</p>;
  const address = source.record === undefined ? undefined : recordAddress?.(source.record);
  const kind = sourceWords(source.kind);
  const saysItself = source.text.toLowerCase().startsWith(kind.toLowerCase());
  return (
    <p className="working-source">
      {!saysItself && <span className="working-kind">{kind} </span>}
      <AddressLink address={address}>{source.text}</AddressLink>
    </p>
  );
}
