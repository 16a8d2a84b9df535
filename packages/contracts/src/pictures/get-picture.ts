import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pictureHash } from './picture.ts';
import { examplePicture, PICTURE_MEDIA_TYPES } from './upload-picture.ts';

export const getPicture = defineContract({
  name: 'get-picture',
  method: 'GET',
  path: '/api/pictures/:sha256',
  summary: 'Read a picture',
  description: 'It never changes under its address and may be kept for good.',
  tag: 'pictures',
  roles: 'anyone',
  params: z.strictObject({ sha256: pictureHash }),
  query: z.strictObject({
    /** full, or a thumbnail of at most 480 pixels. */
    size: z.enum(['full', 'thumbnail']).default('full'),
  }),
  givesFile: PICTURE_MEDIA_TYPES,
  example: { params: { sha256: examplePicture.sha256 }, query: { size: 'thumbnail' } },
});
