import { createDesign } from '@scantling/contracts';
import { EMPTY_BILL } from '@scantling/costing';
import { handle, signedIn } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { addRevision, findDesign, requireFreeCode, sizeColumns } from './design-records.ts';
import { requireKnownCodes } from './known-codes.ts';

export const answerCreateDesign = handle(createDesign, async ({ body, actor, services }) => {
  const { bill = EMPTY_BILL, overallSize, ...fields } = body;
  const createdBy = signedIn(actor).id;
  return services.database.$transaction(async (transaction) => {
    await requireFreeCode(transaction, fields.code);
    await requireKnownCodes(transaction, bill);
    const { id } = await transaction.design.create({ data: { ...fields, ...sizeColumns(overallSize) } });
    await addRevision(transaction, id, { number: 1, bill, note: 'First entered', createdBy });
    const design = await findDesign(transaction, id);
    if (design === null) throw notFound('design');
    return design;
  });
});
