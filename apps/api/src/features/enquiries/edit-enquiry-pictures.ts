import { editEnquiryPictures } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { arrangePictures } from '../../pictures/shown-pictures.ts';

export const answerEditEnquiryPictures = handle(
  editEnquiryPictures,
  ({ params: { id }, body, services, expectedVersion }) =>
    services.database.$transaction((transaction) =>
      arrangePictures(transaction, { of: 'enquiry', id }, expectedVersion(), body),
    ),
);
