import type { UsedPicture } from '@scantling/contracts';
import { pictureAddress } from '../../lib/upload-picture.ts';
import './pictures.css';

interface CoverNameProps {
  readonly cover: UsedPicture | null;
  /** The name, as a link. */
  readonly children: React.ReactNode;
}

/** A record's name in a list, with its cover small before it. */
export function CoverName({ cover, children }: CoverNameProps) {
  return (
    <span className="cover-name">
      <span className="cover-small">
        {cover && (
          <img src={pictureAddress(cover.sha256, 'thumbnail')} alt={cover.alternativeText} loading="lazy" />
        )}
      </span>
      {children}
    </span>
  );
}
