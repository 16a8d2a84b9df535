import { getDocument } from '@scantling/contracts';
import { readDocument } from '../../documents/store-document.ts';
import { FileAnswer, handle } from '../../handle.ts';

export const answerGetDocument = handle(getDocument, async ({ params, services }) => {
  const { fileName, mediaType, bytes, sha256 } = await readDocument(services.database, params.id);
  return new FileAnswer(fileName, mediaType, bytes, {
    tag: sha256,
    isInline: mediaType === 'application/pdf',
  });
});
