import { addEnquiryPicture } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addShownPicture } from '../../pictures/shown-pictures.ts';

export const answerAddEnquiryPicture = handle(addEnquiryPicture, ({ params: { id }, body, services }) =>
  services.database.$transaction((transaction) => addShownPicture(transaction, { of: 'enquiry', id }, body)),
);
