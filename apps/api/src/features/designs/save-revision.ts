import type { DrawnDesign } from '@scantling/costing';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';
import { requireUpdated } from '../../version-match.ts';
import { addRevision, findDesign } from './design-records.ts';

interface Change {
  readonly id: string;
  readonly version: number;
  readonly fields: Prisma.DesignUpdateManyMutationInput;
  readonly drawing: DrawnDesign;
  /** What bare numbers of its formulas are in. */
  readonly unitSystem: string;
  readonly note: string;
  readonly createdBy: string;
}

/** Makes the next revision of a design. @throws RequestProblem version-stale, not-found */
export async function saveRevision(transaction: Prisma.TransactionClient, change: Change) {
  const { id, version } = change;
  const { count } = await transaction.design.updateMany({
    where: { id, version },
    data: { ...change.fields, version: version + 1 },
  });
  await requireUpdated(count, 'design', async () => (await transaction.design.count({ where: { id } })) > 0);
  await addRevision(transaction, id, {
    number: version + 1,
    drawing: change.drawing,
    unitSystem: change.unitSystem,
    note: change.note,
    createdBy: change.createdBy,
  });
  const design = await findDesign(transaction, id);
  if (design === null) throw notFound('design');
  return design;
}
