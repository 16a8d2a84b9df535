import { createDesign } from '@scantling/contracts';
import { EMPTY_BILL } from '@scantling/costing';
import { handle, signedIn } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { addRevision, findDesign, requireFreeCode, sizeColumns } from './design-records.ts';
import { requireSoundDrawing } from './sound-drawing.ts';

export const answerCreateDesign = handle(createDesign, async ({ body, actor, services }) => {
  const { bill = EMPTY_BILL, parameters = [], variants = [], overallSize, ...fields } = body;
  const drawing = { bill, parameters, variants };
  const { unitSystem } = fields;
  const createdBy = signedIn(actor).id;
  return services.database.$transaction(async (transaction) => {
    await requireFreeCode(transaction, fields.code);
    await requireSoundDrawing(transaction, drawing, unitSystem);
    const { id } = await transaction.design.create({ data: { ...fields, ...sizeColumns(overallSize) } });
    const note = 'First entered';
    await addRevision(transaction, id, { number: 1, drawing, unitSystem, note, createdBy });
    const design = await findDesign(transaction, id);
    if (design === null) throw notFound('design');
    return design;
  });
});
