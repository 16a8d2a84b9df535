import { downloadToolRates } from '@scantling/contracts';
import { FigureTableBuilder } from '@scantling/figures';
import { toolRatesWorkbook } from '@scantling/workbooks';
import { handle } from '../../handle.ts';
import { readCostingTools } from '../../shop/costing-tools.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { workbookAbout, workbookAnswer } from '../../workbook-answer.ts';
import { workOutRates } from './work-out-rates.ts';

export const answerDownloadToolRates = handle(downloadToolRates, async ({ query, services }) => {
  const { database, clock } = services;
  const [tools, workshop] = await Promise.all([readCostingTools(database), readWorkshop(database)]);
  const year = query.year ?? clock().getUTCFullYear();
  const table = new FigureTableBuilder({ withDerivations: true });
  const worked = tools.map((tool) => ({
    code: tool.id,
    name: tool.name,
    acquisition: tool.acquisition,
    rates: workOutRates(tool, workshop, year, table, `${tool.id}/`),
  }));
  const workbook = toolRatesWorkbook(
    { tools: worked, year, figures: table.table() },
    await workbookAbout(services),
  );
  return workbookAnswer(`machine-hour-rates-${year}`, workbook);
});
