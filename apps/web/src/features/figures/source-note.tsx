import type { Source } from '@scantling/figures';
import { Link } from '@tanstack/react-router';
import { sourceWords } from './working-words.ts';

interface SourceNoteProps {
  readonly source: Source | undefined;
  readonly recordAddress?: ((record: string) => string | undefined) | undefined;
}

/** Where a leaf came from, with the way to its record. */
export function SourceNote({ source, recordAddress }: SourceNoteProps) {
  if (!source) return <p className="working-source">Its working was not sent with this page.</p>;
  const address = source.record === undefined ? undefined : recordAddress?.(source.record);
  return (
    <p className="working-source">
      <span className="working-kind">{sourceWords(source.kind)}</span>{' '}
      {address === undefined ? source.text : <Link to={address}>{source.text}</Link>}
    </p>
  );
}
