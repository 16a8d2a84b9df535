import { z } from 'zod';
import { singleLine } from '../single-line.ts';
import { writtenText } from '../written-text.ts';

/** The SHA-256 of a picture's bytes, which is also its name. */
export const pictureHash = writtenText({
  pattern: /^[0-9a-f]{64}$/,
  message: 'is no picture',
  mend: 'Send the picture first and name it by the sha256 of the answer.',
  example: '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
});

/** A picture where it is used, with what it says to somebody who does not see it. */
export const usedPictureSchema = z
  .strictObject({ sha256: pictureHash, alternativeText: singleLine(300).min(1) })
  .meta({ id: 'UsedPicture' });
export type UsedPicture = z.output<typeof usedPictureSchema>;
