import { getPicture } from '@scantling/contracts';
import { FileAnswer, handle } from '../../handle.ts';
import { readPicture } from '../../pictures/picture-records.ts';

export const answerGetPicture = handle(getPicture, async ({ params: { sha256 }, query, services }) => {
  const { mediaType, bytes } = await readPicture(services.database, sha256, query.size);
  const name = `${sha256.slice(0, 16)}.${mediaType === 'image/png' ? 'png' : 'jpg'}`;
  // The tag tells the two sizes apart, so that neither is taken for the other.
  const tag = query.size === 'full' ? sha256 : `${sha256}-thumbnail`;
  return new FileAnswer(name, mediaType, bytes, { tag, isInline: true });
});
