import type { ShownPicture } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { movedTo } from '../../lib/picture-arrangement.ts';
import { type PictureCalls, usePictureActs } from '../../lib/picture-calls.ts';
import { useMayCall } from '../../lib/use-session.ts';
import { ErrorNotice } from '../notices.tsx';
import { Loading } from '../progress.tsx';
import { Section } from '../sheet.tsx';
import { NewPictures } from './new-pictures.tsx';
import { PictureStrip } from './picture-strip.tsx';
import { PictureWordsForm } from './picture-words.tsx';
import './pictures.css';

interface PicturesSectionProps {
  readonly calls: PictureCalls;
  /** The record they are of. */
  readonly id: string;
  readonly note: string;
  /** What is said to somebody who may not add any, where there are none. */
  readonly emptyText: string;
}

/** The pictures of a record: added, put in order, described and taken out here; each act is kept at once. */
export function PicturesSection({ calls, id, note, emptyText }: PicturesSectionProps) {
  const pictures = useQuery(calls.query(id));
  const { act, underWay, error, isPending } = usePictureActs(calls, id);
  const canEdit = useMayCall(calls.contracts.edit);
  const [openHash, setOpenHash] = useState<string | null>(null);
  const kept: readonly ShownPicture[] = pictures.data?.value.items ?? [];
  const items = underWay.reduce((list, one) => one(list), kept);
  const at = items.findIndex(({ sha256 }) => sha256 === openHash);
  const open = items[at];
  return (
    <Section title="Pictures" note={note}>
      {pictures.isPending && <Loading />}
      {pictures.isError && <ErrorNotice error={pictures.error} retry={() => void pictures.refetch()} />}
      {error !== null && <ErrorNotice error={error} />}
      {pictures.data && items.length === 0 && !canEdit && <p className="pictures-hint">{emptyText}</p>}
      {items.length > 0 && (
        <PictureStrip
          label="Pictures"
          items={items}
          openHash={openHash}
          onOpen={setOpenHash}
          onMove={canEdit ? (sha256, place) => act(movedTo(sha256, place)) : undefined}
        />
      )}
      {open && (
        <PictureWordsForm
          key={open.sha256}
          picture={open}
          at={at}
          count={items.length}
          isReadOnly={!canEdit}
          isPending={isPending}
          onAct={act}
          onClose={() => setOpenHash(null)}
        />
      )}
      {pictures.data && canEdit && (
        <NewPictures calls={calls} id={id} present={items.map(({ sha256 }) => sha256)} />
      )}
    </Section>
  );
}
