import { addDesignPicture, editDesignPictures, getDesignPictures } from '@scantling/contracts';
import { pictureCalls } from '../../../lib/picture-calls.ts';

export const designPictures = pictureCalls('designs', {
  get: getDesignPictures,
  add: addDesignPicture,
  edit: editDesignPictures,
});
