import { defineContract } from '../contract.ts';
import { exampleShownPictures, shownPicturesSchema } from '../pictures/shown-pictures.ts';
import { recordParams } from '../record.ts';
import { exampleDesign } from './design.ts';

export const getDesignPictures = defineContract({
  name: 'get-design-pictures',
  method: 'GET',
  path: '/api/designs/:id/pictures',
  summary: 'Read the pictures of a design',
  description:
    'In their order. They belong to the design with all its revisions and variants; no revision keeps them.',
  tag: 'designs',
  roles: 'anyone',
  params: recordParams,
  answer: shownPicturesSchema,
  givesEtag: true,
  example: { params: { id: exampleDesign.id }, answer: exampleShownPictures },
});
