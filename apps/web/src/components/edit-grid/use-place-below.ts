import { type RefObject, useLayoutEffect, useState } from 'react';

export interface Place {
  readonly top: number;
  readonly left: number;
  readonly minWidth: number;
  /** px left between the cell and the edge of the window. */
  readonly room: number;
  /** Hangs above the cell, where there is more room. */
  readonly isAbove: boolean;
}

const LEAST_ROOM = 180;

/** Where what belongs to a cell hangs in the window, beyond the frame that would cut it off; follows every scroll. */
export function usePlaceBelow(anchor: RefObject<HTMLElement | null>): Place | null {
  const [place, setPlace] = useState<Place | null>(null);
  useLayoutEffect(() => {
    const measure = (): void => {
      const box = anchor.current?.closest('th, td')?.getBoundingClientRect();
      if (!box) return;
      const below = window.innerHeight - box.bottom;
      const isAbove = below < LEAST_ROOM && box.top > below;
      setPlace({
        top: isAbove ? window.innerHeight - box.top : box.bottom,
        left: Math.max(4, Math.min(box.left, window.innerWidth - Math.max(box.width, 280) - 4)),
        minWidth: box.width,
        room: (isAbove ? box.top : below) - 8,
        isAbove,
      });
    };
    measure();
    window.addEventListener('scroll', measure, true);
    window.addEventListener('resize', measure);
    return () => {
      window.removeEventListener('scroll', measure, true);
      window.removeEventListener('resize', measure);
    };
  }, [anchor]);
  return place;
}
