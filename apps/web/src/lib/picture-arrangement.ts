import type { ShownPicture, ShownPictureInput, ShownPicturesInput } from '@scantling/contracts';

/** A picture as it is sent: which one, what it says to somebody who does not see it, and what stands below it. */
export type PictureWords = ShownPictureInput;

/** A change of a record's pictures. Done twice it changes nothing more, so that it may be shown before it is kept. */
export type PictureAct = (items: readonly ShownPicture[]) => readonly ShownPicture[];

/** The picture comes to stand at a place, counted from 0; beyond an end it stands at that end. */
export function movedTo(sha256: string, place: number): PictureAct {
  return (items) => {
    const moved = items.find((one) => one.sha256 === sha256);
    if (moved === undefined) return items;
    const others = items.filter((one) => one !== moved);
    const at = Math.max(0, Math.min(place, others.length));
    return [...others.slice(0, at), moved, ...others.slice(at)];
  };
}

export function described({ sha256, alternativeText, caption }: PictureWords): PictureAct {
  return (items) => items.map((one) => (one.sha256 === sha256 ? { ...one, alternativeText, caption } : one));
}

/** The picture becomes the one the record is known by. */
export function coveredBy(sha256: string): PictureAct {
  return (items) =>
    items.some((one) => one.sha256 === sha256)
      ? items.map((one) => ({ ...one, isCover: one.sha256 === sha256 }))
      : items;
}

/** The picture is taken out; where it was the cover, the first one left is. */
export function without(sha256: string): PictureAct {
  return (items) => {
    const left = items.filter((one) => one.sha256 !== sha256);
    const [first] = left;
    return first === undefined || left.some(({ isCover }) => isCover) ? left : coveredBy(first.sha256)(left);
  };
}

/** The list as it is sent. */
export function arrangementOf(items: readonly ShownPicture[]): ShownPicturesInput {
  return {
    items: items.map(({ sha256, alternativeText, caption }) => ({ sha256, alternativeText, caption })),
    cover: items.find(({ isCover }) => isCover)?.sha256 ?? null,
  };
}
