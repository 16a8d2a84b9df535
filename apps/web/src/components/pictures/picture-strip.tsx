import type { ShownPicture } from '@scantling/contracts';
import { useId, useState } from 'react';
import { pictureAddress } from '../../lib/upload-picture.ts';
import './pictures.css';

interface PictureStripProps {
  /** "Pictures of the design" */
  readonly label: string;
  readonly items: readonly ShownPicture[];
  readonly openHash: string | null;
  readonly onOpen: (sha256: string | null) => void;
  /** Absent where the order is not to be changed. */
  readonly onMove?: ((sha256: string, place: number) => void) | undefined;
}

const STEPS: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 };

/** The pictures in their order: opened by a press, moved by dragging or by Alt and the arrow keys. */
export function PictureStrip({ label, items, openHash, onOpen, onMove }: PictureStripProps) {
  const [dragged, setDragged] = useState<string | null>(null);
  const [over, setOver] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const hintId = useId();
  const move = ({ sha256, alternativeText }: ShownPicture, place: number): void => {
    if (onMove === undefined || place < 0 || place >= items.length) return;
    onMove(sha256, place);
    setSaid(`${alternativeText} is now picture ${place + 1} of ${items.length}`);
  };
  const end = (): void => {
    setDragged(null);
    setOver(null);
  };
  return (
    <>
      <ol className="picture-strip" aria-label={label}>
        {items.map((picture, at) => {
          const { sha256, alternativeText, caption, isCover } = picture;
          return (
            <li
              key={sha256}
              data-is-over={over === sha256 && dragged !== sha256 ? '' : undefined}
              onDragOver={(event) => {
                if (dragged === null) return;
                event.preventDefault();
                setOver(sha256);
              }}
              onDrop={(event) => {
                if (dragged === null) return;
                event.preventDefault();
                const moved = items.find((one) => one.sha256 === dragged);
                if (moved !== undefined && moved !== picture) move(moved, at);
                end();
              }}
            >
              <button
                type="button"
                draggable={onMove !== undefined}
                aria-expanded={sha256 === openHash}
                aria-describedby={onMove === undefined ? undefined : hintId}
                onClick={() => onOpen(sha256 === openHash ? null : sha256)}
                onDragStart={(event) => {
                  event.dataTransfer.effectAllowed = 'move';
                  event.dataTransfer.setData('text/plain', alternativeText);
                  setDragged(sha256);
                }}
                onDragEnd={end}
                onKeyDown={(event) => {
                  const step = STEPS[event.key];
                  if (step === undefined || !event.altKey || onMove === undefined) return;
                  event.preventDefault();
                  move(picture, at + step);
                }}
              >
                <img src={pictureAddress(sha256, 'thumbnail')} alt={alternativeText} draggable={false} />
              </button>
              <p>
                {isCover && <strong>Cover</strong>}
                {isCover && caption !== '' && ', '}
                {caption}
              </p>
            </li>
          );
        })}
      </ol>
      {onMove !== undefined && items.length > 1 && (
        <p id={hintId} className="pictures-hint">
          Press a picture to change its words or its place; or drag it, or move it by Alt and the arrow keys.
        </p>
      )}
      <p role="status" className="visually-hidden">
        {said}
      </p>
    </>
  );
}
