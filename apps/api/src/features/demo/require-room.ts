import type { FieldProblem } from '@scantling/contracts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { demoRows } from './demo-files.ts';
import { readDemoWorkshop } from './enter-shop.ts';

const codesIn = async (file: string) => (await demoRows(file)).map((row) => row.code ?? '');

/**
 * The demo brings pay, tools and yearly amounts, which every price rests on, so it does not mix with a workshop's own.
 * @throws RequestProblem already-exists naming each kind of record in the way
 */
export async function requireRoom(transaction: Prisma.TransactionClient): Promise<void> {
  const errors: FieldProblem[] = [];
  const refuse = (field: string, message: string) =>
    errors.push({ field, message, mend: 'Load the demo into a workshop of its own (another data folder).' });
  const { currency } = await readDemoWorkshop();
  const workshop = await transaction.workshop.findUnique({ where: { id: 1 } });
  if (workshop !== null && workshop.currency !== currency)
    refuse('workshop', `is in ${workshop.currency}, the demo in ${currency}`);
  const rates = [
    ['labour-grades', await transaction.labourGrade.count()],
    ['people', await transaction.person.count()],
    ['tools', await transaction.tool.count()],
    ['overhead', await transaction.overheadAmount.count()],
  ] as const;
  for (const [field, count] of rates) {
    if (count > 0) refuse(field, 'are there already, and prices rest on them');
  }
  const taken = [
    ['suppliers', await transaction.supplier.count({ where: await among('suppliers.csv') })],
    ['materials', await transaction.material.count({ where: await among('materials.csv') })],
    ['designs', await transaction.design.count({ where: await among('designs.csv') })],
  ] as const;
  for (const [field, count] of taken) {
    if (count > 0) refuse(field, `have ${count} of the demo's codes already`);
  }
  if (errors.length > 0)
    throw new RequestProblem('already-exists', {
      detail: 'The workshop has records of its own that the demo would mix with.',
      errors,
    });
}

async function among(file: string) {
  return { code: { in: await codesIn(file) } };
}
