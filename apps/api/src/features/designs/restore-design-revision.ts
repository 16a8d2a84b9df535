import { restoreDesignRevision } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { requireRevision } from './revision-records.ts';
import { saveRevision } from './save-revision.ts';
import { requireSoundDrawing } from './sound-drawing.ts';

export const answerRestoreDesignRevision = handle(
  restoreDesignRevision,
  async ({ params: { id, number }, actor, services, expectedVersion }) =>
    services.database.$transaction(async (transaction) => {
      const { drawing, unitSystem } = await requireRevision(transaction, id, number);
      await requireSoundDrawing(transaction, drawing, unitSystem);
      return saveRevision(transaction, {
        id,
        version: expectedVersion(),
        fields: { unitSystem },
        unitSystem,
        drawing,
        note: `Revision ${number} brought back`,
        createdBy: signedIn(actor).id,
      });
    }),
);
