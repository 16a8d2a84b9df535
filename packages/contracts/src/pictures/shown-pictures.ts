import { z } from 'zod';
import { singleLine } from '../single-line.ts';
import { pictureHash, usedPictureSchema } from './picture.ts';
import { examplePicture, pictureSchema } from './upload-picture.ts';

/** The most pictures a design or an enquiry has. */
export const MOST_SHOWN_PICTURES = 60;

/** A picture with what it says to somebody who does not see it, and what stands below it. */
export const shownPictureInputSchema = z.strictObject({
  ...usedPictureSchema.shape,
  caption: singleLine(300).default(''),
});
export type ShownPictureInput = z.output<typeof shownPictureInputSchema>;

/** All pictures of a record in their order; `cover` names the one it is known by, null takes the first. */
export const shownPicturesInputSchema = z.strictObject({
  items: z.array(shownPictureInputSchema).max(MOST_SHOWN_PICTURES),
  cover: pictureHash.nullable(),
});
export type ShownPicturesInput = z.output<typeof shownPicturesInputSchema>;

export const shownPictureSchema = z
  .strictObject({ ...pictureSchema.shape, ...shownPictureInputSchema.shape, isCover: z.boolean() })
  .meta({ id: 'ShownPicture' });
export type ShownPicture = z.output<typeof shownPictureSchema>;

/** All pictures of a record in their order. One is the cover as soon as there is any. */
export const shownPicturesSchema = z
  .strictObject({
    items: z.array(shownPictureSchema),
    /** Counts changes of the pictures, apart from those of the record they belong to. */
    version: z.number().int(),
  })
  .meta({ id: 'ShownPictures' });
export type ShownPictures = z.output<typeof shownPicturesSchema>;

export const exampleShownPictureInput = {
  sha256: examplePicture.sha256,
  alternativeText: 'The bench in a hall, with boots on its shelf',
  caption: 'In ash, oiled',
} as const;
export const exampleShownPictures = {
  items: [{ ...examplePicture, ...exampleShownPictureInput, isCover: true }],
  version: 2,
};
