import { defineContract } from '../contract.ts';
import {
  exampleShownPictureInput,
  exampleShownPictures,
  shownPicturesInputSchema,
  shownPicturesSchema,
} from '../pictures/shown-pictures.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleEnquiry } from './enquiry.ts';

export const editEnquiryPictures = defineContract({
  name: 'edit-enquiry-pictures',
  method: 'PUT',
  path: '/api/enquiries/:id/pictures',
  summary: 'Arrange the pictures of an enquiry',
  description:
    'Order, words, cover, and which there are: the list sent becomes the list kept. The ETag is of the pictures alone.',
  tag: 'enquiries',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: shownPicturesInputSchema,
  answer: shownPicturesSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleEnquiry.id },
    body: { items: [exampleShownPictureInput], cover: exampleShownPictureInput.sha256 },
    answer: { ...exampleShownPictures, version: 3 },
  },
});
