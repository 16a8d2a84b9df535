import { useState } from 'react';
import { fieldErrors } from '../../lib/field-errors.ts';
import { type PictureCalls, useAddPicture } from '../../lib/picture-calls.ts';
import {
  MOST_PICTURE_BYTES,
  PICTURE_ENDINGS,
  pictureAddress,
  useUploadPicture,
} from '../../lib/upload-picture.ts';
import { Button } from '../button.tsx';
import type { FieldMessage } from '../field.tsx';
import { FileDrop } from '../file-drop.tsx';
import { ErrorNotice } from '../notices.tsx';
import { TextInput } from '../text-input.tsx';
import { useWaitingPictures, type WaitingPicture } from './waiting-pictures.ts';
import './pictures.css';

interface NewPicturesProps {
  readonly calls: PictureCalls;
  readonly id: string;
  /** Names of the pictures that are there already. */
  readonly present: readonly string[];
}

/** Why a file is not taken, under its name. */
function refusalOf({ name }: File, error: unknown): FieldMessage {
  const found = fieldErrors(error, ['file']).errorFor('file');
  if (found !== undefined) return { message: `"${name}" ${found.message}.`, mend: found.mend };
  return { message: `"${name}" was not sent.`, mend: error instanceof Error ? error.message : undefined };
}

/** Files are sent as they come; each waits here for its words, and is added with them. */
export function NewPictures({ calls, id, present }: NewPicturesProps) {
  const upload = useUploadPicture();
  const { waiting, take, change, leave } = useWaitingPictures(`${calls.term}:${id}`);
  const [refused, setRefused] = useState<readonly FieldMessage[]>([]);
  const [left, setLeft] = useState(0);
  const send = async (file: File): Promise<void> => {
    if (left === 0) setRefused([]);
    setLeft((now) => now + 1);
    try {
      const { sha256 } = await upload.mutateAsync(file);
      if (present.includes(sha256))
        setRefused((now) => [...now, { message: `"${file.name}" is among the pictures already.` }]);
      else take({ sha256, fileName: file.name, alternativeText: '', caption: '' });
    } catch (error) {
      setRefused((now) => [...now, refusalOf(file, error)]);
    }
    setLeft((now) => now - 1);
  };
  return (
    <div className="pictures-new">
      {waiting.map((picture) => (
        <NewPicture
          key={picture.sha256}
          picture={picture}
          calls={calls}
          id={id}
          onChange={(words) => change(picture.sha256, words)}
          onLeave={() => leave(picture.sha256)}
        />
      ))}
      {refused.map(({ message, mend }) => (
        <p key={message} role="alert" className="field-error">
          <strong>{message}</strong> {mend}
        </p>
      ))}
      <FileDrop
        label={left > 0 ? `Sending, ${left} to go ...` : 'Photographs and drawings'}
        endings={PICTURE_ENDINGS}
        mostBytes={MOST_PICTURE_BYTES}
        takesSeveral
        hint="To paste a copied one, press here first. JPEG, PNG or WebP of at most 25 MB; place and camera data are left out"
        onFile={(file) => void send(file)}
      />
    </div>
  );
}

const FIELDS = ['alternativeText', 'caption'];

interface NewPictureProps {
  readonly picture: WaitingPicture;
  readonly calls: PictureCalls;
  readonly id: string;
  readonly onChange: (words: Partial<WaitingPicture>) => void;
  readonly onLeave: () => void;
}

function NewPicture({ picture, calls, id, onChange, onLeave }: NewPictureProps) {
  const { sha256, fileName, alternativeText, caption } = picture;
  const [isAsked, setIsAsked] = useState(false);
  const add = useAddPicture(calls, id);
  const { errorFor, unplaced } = fieldErrors(add.error, FIELDS);
  const missing =
    isAsked && alternativeText.trim() === ''
      ? { message: 'is missing', mend: 'Say in a few words what is to be seen.' }
      : undefined;
  return (
    <form
      className="picture-new"
      aria-label={`New picture ${fileName}`}
      onSubmit={(event) => {
        event.preventDefault();
        setIsAsked(true);
        if (alternativeText.trim() !== '')
          add.mutate({ sha256, alternativeText, caption }, { onSuccess: onLeave });
      }}
    >
      <img
        src={pictureAddress(sha256, 'thumbnail')}
        alt={alternativeText || `${fileName}, not described yet`}
      />
      <div className="picture-side">
        {add.isError && unplaced.length > 0 && <ErrorNotice error={add.error} errors={unplaced} />}
        <div className="picture-fields">
          <TextInput
            label="What it shows"
            hint="Read out to people who do not see it; required"
            value={alternativeText}
            onChange={(next) => onChange({ alternativeText: next })}
            error={missing ?? errorFor('alternativeText')}
            isRequired
          />
          <TextInput
            label="Caption"
            hint="Stands below it, where you want one"
            value={caption}
            onChange={(next) => onChange({ caption: next })}
            error={errorFor('caption')}
          />
        </div>
        <div className="picture-choices">
          <Button type="submit" look="main" isPending={add.isPending} pendingText="Adding ...">
            Add the picture
          </Button>
          <Button look="quiet" onPress={onLeave}>
            Leave it out
          </Button>
        </div>
      </div>
    </form>
  );
}
