import type { QuoteDraft } from '@scantling/quoting';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { createContext, useContext } from 'react';
import type { PictureValue } from '../../../components/picture-field.tsx';
import { pictureAddress } from '../../../lib/upload-picture.ts';
import { type OfferedPictures, offeredPicturesQuery } from '../api/list-offered-pictures.ts';
import './offered-pictures.css';

const Offered = createContext<readonly OfferedPictures[]>([]);

interface OfferPicturesProps {
  readonly draft: QuoteDraft;
  readonly enquiryId: string | null;
  readonly children: React.ReactNode;
}

/** Reads the pictures that are there already once for all fields of a draft. */
export function OfferPictures({ draft, enquiryId, children }: OfferPicturesProps) {
  const ids = draft.lines.flatMap((line) =>
    line.kind === 'cost-sheet' && line.costSheetId !== '' ? [line.costSheetId] : [],
  );
  const offered = useQuery({ ...offeredPicturesQuery(ids, enquiryId), placeholderData: keepPreviousData });
  return <Offered value={offered.data ?? []}>{children}</Offered>;
}

interface OfferedChoiceProps {
  readonly taken: readonly PictureValue[];
  readonly onTake: (picture: PictureValue) => void;
}

/** Pictures of the designs and of the enquiry that are not taken yet; a press takes one with its words. */
export function OfferedChoice({ taken, onTake }: OfferedChoiceProps) {
  const offered = useContext(Offered);
  const left = offered
    .map(({ from, pictures }) => ({
      from,
      pictures: pictures.filter(({ sha256 }) => taken.every((one) => one.sha256 !== sha256)),
    }))
    .filter(({ pictures }) => pictures.length > 0);
  return left.map(({ from, pictures }) => (
    <fieldset key={from} className="offered-pictures">
      <legend>Take one of {from}</legend>
      {pictures.map(({ sha256, alternativeText }) => (
        <button key={sha256} type="button" onClick={() => onTake({ sha256, alternativeText })}>
          <img src={pictureAddress(sha256, 'thumbnail')} alt={alternativeText} />
        </button>
      ))}
    </fieldset>
  ));
}
