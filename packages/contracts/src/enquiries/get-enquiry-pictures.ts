import { defineContract } from '../contract.ts';
import { exampleShownPictures, shownPicturesSchema } from '../pictures/shown-pictures.ts';
import { recordParams } from '../record.ts';
import { exampleEnquiry } from './enquiry.ts';

export const getEnquiryPictures = defineContract({
  name: 'get-enquiry-pictures',
  method: 'GET',
  path: '/api/enquiries/:id/pictures',
  summary: 'Read the pictures of an enquiry',
  description: 'What the client sent or was seen on the visit, in order.',
  tag: 'enquiries',
  roles: 'anyone',
  params: recordParams,
  answer: shownPicturesSchema,
  givesEtag: true,
  example: { params: { id: exampleEnquiry.id }, answer: exampleShownPictures },
});
