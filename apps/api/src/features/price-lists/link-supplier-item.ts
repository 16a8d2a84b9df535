import { linkSupplierItem } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { toSupplierItem, WITH_MATERIAL } from './supplier-item-records.ts';

export const answerLinkSupplierItem = handle(linkSupplierItem, ({ params: { id }, body, services }) =>
  services.database.$transaction(async (transaction) => {
    const { materialId } = body;
    if ((await transaction.supplierItem.count({ where: { id } })) === 0) throw notFound("supplier's article");
    if (materialId !== null && (await transaction.material.count({ where: { id: materialId } })) === 0)
      throw fieldProblem(
        'materialId',
        'is no material',
        'Choose a material that is entered, or null to unlink.',
      );
    const row = await transaction.supplierItem.update({
      where: { id },
      data: { materialId },
      include: WITH_MATERIAL,
    });
    return toSupplierItem(row);
  }),
);
