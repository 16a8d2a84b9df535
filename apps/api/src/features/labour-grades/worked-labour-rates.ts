import type { AnswerOf, getLabourRates } from '@scantling/contracts';
import { labourRates } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import type { Database } from '../../database/connect.ts';
import { readCostingGrades } from '../../shop/labour-grades.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';

/** What an hour of each labour grade costs. @throws CostingInputError */
export async function workedLabourRates(
  database: Database,
  options: { withDerivations: boolean },
): Promise<AnswerOf<typeof getLabourRates>> {
  const [grades, { currency }, ids] = await Promise.all([
    readCostingGrades(database),
    readWorkshop(database),
    database.labourGrade.findMany({ select: { id: true, code: true } }),
  ]);
  const idByCode = new Map(ids.map(({ id, code }) => [code, id]));
  const table = new FigureTableBuilder(options);
  const rates = labourRates(grades, { currency }).map((rate) => ({
    gradeId: idByCode.get(rate.gradeId) ?? rate.gradeId,
    code: rate.gradeId,
    name: rate.name,
    isOwner: rate.isOwner,
    pay: table.add(`${rate.gradeId}/pay`, rate.pay),
    paidHour: table.add(`${rate.gradeId}/paid-hour`, rate.paidHour),
    perHour: table.add(`${rate.gradeId}/per-hour`, rate.perHour),
  }));
  return { rates, figures: table.table() };
}
