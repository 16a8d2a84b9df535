import { getLabourRates } from '@scantling/contracts';
import { labourRates } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { handle } from '../../handle.ts';
import { readCostingGrades } from '../../shop/labour-grades.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';

export const answerGetLabourRates = handle(getLabourRates, async ({ query, services }) => {
  const { database } = services;
  const [grades, { currency }, ids] = await Promise.all([
    readCostingGrades(database),
    readWorkshop(database),
    database.labourGrade.findMany({ select: { id: true, code: true } }),
  ]);
  const idByCode = new Map(ids.map(({ id, code }) => [code, id]));
  const table = new FigureTableBuilder({ withDerivations: query.working });
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
});
