import { defineContract } from '../contract.ts';
import {
  exampleShownPictureInput,
  exampleShownPictures,
  shownPicturesInputSchema,
  shownPicturesSchema,
} from '../pictures/shown-pictures.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { exampleDesign } from './design.ts';

export const editDesignPictures = defineContract({
  name: 'edit-design-pictures',
  method: 'PUT',
  path: '/api/designs/:id/pictures',
  summary: 'Arrange the pictures of a design',
  description:
    'Order, words, cover, and which there are: the list sent becomes the list kept. The ETag is of the pictures alone.',
  tag: 'designs',
  roles: MAKERS,
  params: recordParams,
  body: shownPicturesInputSchema,
  answer: shownPicturesSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleDesign.id },
    body: { items: [exampleShownPictureInput], cover: exampleShownPictureInput.sha256 },
    answer: { ...exampleShownPictures, version: 3 },
  },
});
