import { useEffect, useState } from 'react';
import { z } from 'zod';

const waitingSchema = z.array(
  z.object({ sha256: z.string(), fileName: z.string(), alternativeText: z.string(), caption: z.string() }),
);

/** A picture that was sent and waits for its words. */
export type WaitingPicture = z.output<typeof waitingSchema>[number];

function keptUnder(key: string): readonly WaitingPicture[] {
  try {
    const read = waitingSchema.safeParse(JSON.parse(sessionStorage.getItem(key) ?? '[]'));
    return read.success ? read.data : [];
  } catch {
    return [];
  }
}

/** The pictures that wait for their words, kept in this window of the browser through reloads. */
export function useWaitingPictures(place: string) {
  const key = `pictures:${place}`;
  const [waiting, setWaiting] = useState(() => keptUnder(key));
  useEffect(() => {
    try {
      if (waiting.length === 0) sessionStorage.removeItem(key);
      else sessionStorage.setItem(key, JSON.stringify(waiting));
    } catch {
      // A full or forbidden storage keeps nothing; what waits still stands on the screen.
    }
  }, [key, waiting]);
  return {
    waiting,
    /** A picture that is among them already stays as it is. */
    take: (picture: WaitingPicture): void =>
      setWaiting((now) => (now.some(({ sha256 }) => sha256 === picture.sha256) ? now : [...now, picture])),
    change: (sha256: string, words: Partial<WaitingPicture>): void =>
      setWaiting((now) => now.map((one) => (one.sha256 === sha256 ? { ...one, ...words } : one))),
    leave: (sha256: string): void => setWaiting((now) => now.filter((one) => one.sha256 !== sha256)),
  };
}
