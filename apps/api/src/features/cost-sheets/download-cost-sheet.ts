import { downloadCostSheet, toWorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { costSheetWorkbook } from '@scantling/workbooks';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { workbookAnswer } from '../../workbook-answer.ts';
import { findCostSheet } from './cost-sheet-records.ts';
import { gatherInput } from './gather-input.ts';

export const answerDownloadCostSheet = handle(downloadCostSheet, async ({ params, services }) => {
  const { database, clock } = services;
  const sheet = await findCostSheet(database, params.id);
  if (sheet === null) throw notFound('cost sheet');
  const { name, settings } = await readWorkshop(database);
  const input = await gatherInput(database, sheet, clock().toISOString().slice(0, 10));
  const { title, designName, clientName, unitSystem } = sheet;
  const workbook = costSheetWorkbook({
    title,
    facts: [`${designName}, for ${clientName ?? 'nobody in particular'}. ${name}.`],
    worked: toWorkedCostSheet(costSheet(input), { withDerivations: true }),
    lengths: unitSystem === 'imperial' ? 'in' : 'mm',
    paper: settings.letterhead.paperSize,
  });
  return workbookAnswer(title, workbook);
});
