import { editDesign } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { findDesign, requireFreeCode, sizeColumns } from './design-records.ts';
import { saveRevision } from './save-revision.ts';
import { requireSameUnit, requireSoundDrawing } from './sound-drawing.ts';

export const answerEditDesign = handle(
  editDesign,
  async ({ params, body, actor, services, expectedVersion }) => {
    const { bill, parameters, variants, note, overallSize, ...rest } = body;
    const fields = { ...rest, ...sizeColumns(overallSize) };
    return services.database.$transaction(async (transaction) => {
      const before = await findDesign(transaction, params.id);
      if (before === null) throw notFound('design');
      const drawing = {
        bill,
        parameters: parameters ?? before.parameters,
        variants: variants ?? before.variants,
      };
      await requireFreeCode(transaction, fields.code, params.id);
      requireSameUnit(drawing, before.unitSystem, fields.unitSystem);
      await requireSoundDrawing(transaction, drawing, fields.unitSystem);
      return saveRevision(transaction, {
        id: params.id,
        version: expectedVersion(),
        fields,
        unitSystem: fields.unitSystem,
        drawing,
        note,
        createdBy: signedIn(actor).id,
      });
    });
  },
);
