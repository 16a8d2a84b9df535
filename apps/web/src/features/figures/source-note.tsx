import type { Source } from '@scantling/figures';
import { Link } from '@tanstack/react-router';
import type { RecordAddress } from './record-address.ts';
import { sourceWords } from './working-words.ts';

interface SourceNoteProps {
  readonly source: Source | undefined;
  readonly recordAddress?: ((record: string) => RecordAddress | undefined) | undefined;
}

/** Where a leaf came from, with the way to its record. */
export function SourceNote({ source, recordAddress }: SourceNoteProps) {
  if (!source) return <p className="working-source">Its working was not sent with this page.</p>;
  const address = source.record === undefined ? undefined : recordAddress?.(source.record);
  return (
    <p className="working-source">
      <span className="working-kind">{sourceWords(source.kind)}</span>{' '}
      <SourceText text={source.text} address={address} />
    </p>
  );
}

function SourceText({
  text,
  address,
}: {
  readonly text: string;
  readonly address: RecordAddress | undefined;
}) {
  if (address === undefined) return text;
  if (address.list === undefined) return <Link to={address.to}>{text}</Link>;
  return (
    <Link
      to="/price-lists/$priceListId"
      params={{ priceListId: address.list }}
      search={{ line: address.line }}
    >
      {text}
    </Link>
  );
}
