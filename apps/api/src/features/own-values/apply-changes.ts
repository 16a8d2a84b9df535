import { applyChanges } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { takeOver } from './carry-out.ts';

export const answerApplyChanges = handle(applyChanges, ({ params, body, actor, expectedVersion, services }) =>
  takeOver(services.database, {
    id: params.id,
    version: expectedVersion(),
    body,
    actor: signedIn(actor),
    now: services.clock(),
  }),
);
