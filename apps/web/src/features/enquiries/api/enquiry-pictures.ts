import { addEnquiryPicture, editEnquiryPictures, getEnquiryPictures } from '@scantling/contracts';
import { pictureCalls } from '../../../lib/picture-calls.ts';

export const enquiryPictures = pictureCalls('enquiries', {
  get: getEnquiryPictures,
  add: addEnquiryPicture,
  edit: editEnquiryPictures,
});
