import { addDesignPicture } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addShownPicture } from '../../pictures/shown-pictures.ts';

export const answerAddDesignPicture = handle(addDesignPicture, ({ params: { id }, body, services }) =>
  services.database.$transaction((transaction) => addShownPicture(transaction, { of: 'design', id }, body)),
);
