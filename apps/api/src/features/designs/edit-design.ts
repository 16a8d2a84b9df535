import { editDesign } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { requireFreeCode, sizeColumns } from './design-records.ts';
import { requireKnownCodes } from './known-codes.ts';
import { saveRevision } from './save-revision.ts';

export const answerEditDesign = handle(
  editDesign,
  async ({ params, body, actor, services, expectedVersion }) => {
    const { bill, note, overallSize, ...rest } = body;
    const fields = { ...rest, ...sizeColumns(overallSize) };
    return services.database.$transaction(async (transaction) => {
      await requireFreeCode(transaction, fields.code, params.id);
      await requireKnownCodes(transaction, bill);
      const createdBy = signedIn(actor).id;
      return saveRevision(transaction, {
        id: params.id,
        version: expectedVersion(),
        fields,
        bill,
        note,
        createdBy,
      });
    });
  },
);
