import type { ShownPicture } from '@scantling/contracts';
import { useState } from 'react';
import { coveredBy, described, movedTo, type PictureAct, without } from '../../lib/picture-arrangement.ts';
import { pictureAddress } from '../../lib/upload-picture.ts';
import { Button } from '../button.tsx';
import { RemoveAct } from '../record-editor/remove-act.tsx';
import { TextInput } from '../text-input.tsx';
import './pictures.css';

interface PictureWordsProps {
  readonly picture: ShownPicture;
  /** Its place, from 0. */
  readonly at: number;
  readonly count: number;
  readonly isReadOnly: boolean;
  readonly isPending: boolean;
  readonly onAct: (act: PictureAct, onSuccess?: () => void) => void;
  readonly onClose: () => void;
}

/** One picture large, with its words and what can be done with it. */
export function PictureWordsForm(props: PictureWordsProps) {
  const { picture, at, count, isReadOnly, isPending, onAct, onClose } = props;
  const { sha256, isCover } = picture;
  const [words, setWords] = useState({ alternativeText: picture.alternativeText, caption: picture.caption });
  const [isSaved, setIsSaved] = useState(false);
  const isChanged = words.alternativeText !== picture.alternativeText || words.caption !== picture.caption;
  const change = (part: Partial<typeof words>): void => {
    setIsSaved(false);
    setWords({ ...words, ...part });
  };
  const missing =
    words.alternativeText.trim() === ''
      ? { message: 'is missing', mend: 'Say in a few words what is to be seen.' }
      : undefined;
  return (
    <form
      className="picture-open"
      aria-label={`Picture ${at + 1} of ${count}`}
      onSubmit={(event) => {
        event.preventDefault();
        if (missing === undefined) onAct(described({ sha256, ...words }), () => setIsSaved(true));
      }}
    >
      <a href={pictureAddress(sha256)} target="_blank" rel="noreferrer" className="picture-large">
        <img
          src={pictureAddress(sha256)}
          width={picture.width}
          height={picture.height}
          alt={`${picture.alternativeText} (opens in full size)`}
        />
      </a>
      <div className="picture-side">
        <p className="picture-place">
          Picture {at + 1} of {count}
          {isCover && ', the cover'}
        </p>
        {isReadOnly ? (
          <>
            <p>{picture.alternativeText}</p>
            <p>{picture.caption}</p>
          </>
        ) : (
          <div className="picture-fields">
            <TextInput
              label="What it shows"
              hint="Read out to people who do not see it; required"
              value={words.alternativeText}
              onChange={(alternativeText) => change({ alternativeText })}
              error={missing}
              isRequired
            />
            <TextInput
              label="Caption"
              hint="Stands below it, where you want one"
              value={words.caption}
              onChange={(caption) => change({ caption })}
            />
          </div>
        )}
        <div className="picture-choices">
          {!isReadOnly && (
            <>
              {isChanged && (
                <Button
                  type="submit"
                  look="main"
                  isDisabled={missing !== undefined}
                  isPending={isPending}
                  pendingText="Saving ..."
                >
                  Save the words
                </Button>
              )}
              {!isCover && <Button onPress={() => onAct(coveredBy(sha256))}>Make it the cover</Button>}
              <Button isDisabled={at === 0} onPress={() => onAct(movedTo(sha256, at - 1))}>
                Move earlier
              </Button>
              <Button isDisabled={at === count - 1} onPress={() => onAct(movedTo(sha256, at + 1))}>
                Move later
              </Button>
              <RemoveAct
                title="Take this picture out?"
                act="Take it out"
                consequence="Its words go with it. Quotes that show it keep it."
                isPending={isPending}
                error={null}
                onRemove={() => onAct(without(sha256), onClose)}
              />
            </>
          )}
          <Button look="quiet" onPress={onClose}>
            Close
          </Button>
          {isSaved && !isChanged && (
            <p role="status" className="picture-said">
              The words are saved.
            </p>
          )}
        </div>
      </div>
    </form>
  );
}
