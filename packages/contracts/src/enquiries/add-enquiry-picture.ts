import { defineContract } from '../contract.ts';
import {
  exampleShownPictureInput,
  exampleShownPictures,
  shownPictureInputSchema,
  shownPicturesSchema,
} from '../pictures/shown-pictures.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleEnquiry } from './enquiry.ts';

export const addEnquiryPicture = defineContract({
  name: 'add-enquiry-picture',
  method: 'POST',
  path: '/api/enquiries/:id/pictures',
  summary: 'Add a picture to an enquiry',
  description:
    'After the others; the first becomes the cover. Send the file by `POST /api/pictures` before and name it by the sha256 of the answer.',
  tag: 'enquiries',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: shownPictureInputSchema,
  answer: shownPicturesSchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: {
    params: { id: exampleEnquiry.id },
    body: exampleShownPictureInput,
    answer: exampleShownPictures,
  },
});
