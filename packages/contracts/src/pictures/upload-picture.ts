import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { pictureHash } from './picture.ts';

/** Media types of pictures as they are kept. */
export const PICTURE_MEDIA_TYPES = ['image/jpeg', 'image/png'] as const;

/** A picture as it is kept, without its bytes. */
export const pictureSchema = z
  .strictObject({
    sha256: pictureHash,
    mediaType: z.enum(PICTURE_MEDIA_TYPES),
    /** Pixels. */
    width: z.number().int(),
    height: z.number().int(),
  })
  .meta({ id: 'Picture' });
export type PictureRecord = z.output<typeof pictureSchema>;

export const examplePicture = {
  sha256: '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
  mediaType: 'image/jpeg',
  width: 2400,
  height: 1600,
} as const;

export const uploadPicture = defineContract({
  name: 'upload-picture',
  method: 'POST',
  path: '/api/pictures',
  summary: 'Send a picture',
  description:
    'JPEG, PNG or WebP of at most 25 MB and 50 million pixels, as multipart/form-data. It is made anew: turned upright, without place and camera data, in sRGB, at most 3000 pixels long. The same picture twice is kept once; the answer names it by its content.',
  tag: 'pictures',
  roles: RECORD_KEEPERS,
  takesFile: true,
  answer: pictureSchema,
  status: 201,
  example: { answer: examplePicture },
});
