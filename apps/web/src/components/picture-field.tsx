import { FileTrigger } from 'react-aria-components';
import { PICTURE_ENDINGS, pictureAddress, useUploadPicture } from '../lib/upload-picture.ts';
import { Button } from './button.tsx';
import type { FieldMessage } from './field.tsx';
import { FileDrop } from './file-drop.tsx';
import { ErrorNotice } from './notices.tsx';
import { TextInput } from './text-input.tsx';
import './picture-field.css';

/** A picture where it is used: which one, and what it says to somebody who does not see it. */
export interface PictureValue {
  readonly sha256: string;
  readonly alternativeText: string;
}

export interface PictureFieldProps {
  /** What the picture is of or for ("Logo"). */
  readonly label: string;
  readonly value: PictureValue | null;
  readonly onChange: (value: PictureValue | null) => void;
  readonly hint?: string;
  readonly error?: FieldMessage | undefined;
  /** Error of the alternative text. */
  readonly textError?: FieldMessage | undefined;
  readonly isReadOnly?: boolean;
}

/** One picture with its preview and its alternative text. It is sent when it is chosen, and used when saved. */
export function PictureField(props: PictureFieldProps) {
  const { label, value, onChange, hint, error, textError, isReadOnly = false } = props;
  const upload = useUploadPicture();
  const send = (file: File): void =>
    upload.mutate(file, {
      onSuccess: ({ sha256 }) => onChange({ sha256, alternativeText: value?.alternativeText ?? '' }),
    });
  return (
    <fieldset className="picture-field">
      <legend className="field-label">{label}</legend>
      {value === null && isReadOnly && <p className="field-hint">None</p>}
      {value === null && !isReadOnly && (
        <FileDrop
          label={upload.isPending ? 'Sending ...' : 'A photograph or drawing'}
          endings={PICTURE_ENDINGS}
          hint={hint ?? 'JPEG, PNG or WebP; place and camera data are left out'}
          error={error}
          onFile={send}
          isDisabled={upload.isPending}
        />
      )}
      {value !== null && (
        <div className="picture-used">
          <img src={pictureAddress(value.sha256, 'thumbnail')} alt={value.alternativeText} />
          <div className="picture-words">
            <TextInput
              label="What it shows"
              hint="Read out to people who do not see it, and required in a PDF"
              value={value.alternativeText}
              onChange={(alternativeText) => onChange({ ...value, alternativeText })}
              error={textError ?? error}
              isRequired
              isReadOnly={isReadOnly}
            />
            {!isReadOnly && (
              <div className="picture-acts">
                <FileTrigger
                  acceptedFileTypes={PICTURE_ENDINGS}
                  onSelect={(files) => {
                    const file = files?.[0];
                    if (file) send(file);
                  }}
                >
                  <Button isPending={upload.isPending} pendingText="Sending ...">
                    Another picture
                  </Button>
                </FileTrigger>
                <Button look="quiet" onPress={() => onChange(null)}>
                  Take out
                </Button>
              </div>
            )}
          </div>
        </div>
      )}
      {upload.isError && <ErrorNotice error={upload.error} />}
    </fieldset>
  );
}
