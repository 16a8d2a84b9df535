import { defineContract } from '../contract.ts';
import {
  exampleShownPictureInput,
  exampleShownPictures,
  shownPictureInputSchema,
  shownPicturesSchema,
} from '../pictures/shown-pictures.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleDesign } from './design.ts';

export const addDesignPicture = defineContract({
  name: 'add-design-picture',
  method: 'POST',
  path: '/api/designs/:id/pictures',
  summary: 'Add a picture to a design',
  description:
    'After the others; the first becomes the cover. Send the file by `POST /api/pictures` before and name it by the sha256 of the answer.',
  tag: 'designs',
  roles: MAKERS,
  params: recordParams,
  body: shownPictureInputSchema,
  answer: shownPicturesSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: { params: { id: exampleDesign.id }, body: exampleShownPictureInput, answer: exampleShownPictures },
});
