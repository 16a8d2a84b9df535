import { previewChanges } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { foresee } from './carry-out.ts';

export const answerPreviewChanges = handle(previewChanges, async ({ params, body, actor, services }) =>
  foresee(services.database, {
    id: params.id,
    version: null,
    body,
    actor: signedIn(actor),
    now: services.clock(),
  }),
);
