import { editDesignPictures } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { arrangePictures } from '../../pictures/shown-pictures.ts';

export const answerEditDesignPictures = handle(
  editDesignPictures,
  ({ params: { id }, body, services, expectedVersion }) =>
    services.database.$transaction((transaction) =>
      arrangePictures(transaction, { of: 'design', id }, expectedVersion(), body),
    ),
);
