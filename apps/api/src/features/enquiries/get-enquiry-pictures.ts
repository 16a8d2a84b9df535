import { getEnquiryPictures } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readShownPictures } from '../../pictures/shown-pictures.ts';

export const answerGetEnquiryPictures = handle(getEnquiryPictures, ({ params: { id }, services }) =>
  readShownPictures(services.database, { of: 'enquiry', id }),
);
