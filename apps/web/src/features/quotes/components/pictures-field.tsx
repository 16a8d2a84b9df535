import type { FieldMessage } from '../../../components/field.tsx';
import { PictureField } from '../../../components/picture-field.tsx';
import type { Pictures } from './line-cells.ts';
import { OfferedChoice } from './offered-pictures.tsx';
import './quote.css';

interface PicturesFieldProps {
  readonly label: string;
  readonly pictures: Pictures;
  readonly onChange: (pictures: Pictures) => void;
  readonly error?: FieldMessage | undefined;
}

/** Several pictures in their order, with a place for one more. */
export function PicturesField({ label, pictures, onChange, error }: PicturesFieldProps) {
  return (
    <div className="quote-pictures">
      {pictures.map((picture, at) => (
        <PictureField
          key={picture.sha256}
          label={`${label}, ${at + 1}`}
          value={picture}
          onChange={(next) =>
            onChange(pictures.flatMap((one, place) => (place === at ? (next === null ? [] : [next]) : [one])))
          }
        />
      ))}
      <PictureField
        key={`new ${pictures.length}`}
        label={pictures.length === 0 ? label : `${label}, one more`}
        value={null}
        error={error}
        onChange={(next) => {
          if (next !== null && pictures.every(({ sha256 }) => sha256 !== next.sha256))
            onChange([...pictures, next]);
        }}
      />
      <OfferedChoice taken={pictures} onTake={(next) => onChange([...pictures, next])} />
    </div>
  );
}
