import { getDesignPictures } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readShownPictures } from '../../pictures/shown-pictures.ts';

export const answerGetDesignPictures = handle(getDesignPictures, ({ params: { id }, services }) =>
  readShownPictures(services.database, { of: 'design', id }),
);
