import { uploadPicture } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { keepPicture } from '../../pictures/picture-records.ts';
import { readBytes } from '../../read-bytes.ts';
import { actorKey } from '../../sign-in/actor.ts';

const MOST_BYTES = 25 * 1024 * 1024;

export const answerUploadPicture = handle(uploadPicture, async ({ file, actor, services }) => {
  const { content } = await file();
  const bytes = await readBytes(
    content,
    MOST_BYTES,
    'The picture has more than 25 MB: make it smaller first.',
  );
  return keepPicture(services.database, bytes, { createdBy: actorKey(signedIn(actor)) });
});
