import { getToolRates } from '@scantling/contracts';
import { FigureTableBuilder } from '@scantling/figures';
import { handle } from '../../handle.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { costingTool } from './costing-tool.ts';
import { workOutRates } from './work-out-rates.ts';

export const answerGetToolRates = handle(getToolRates, async ({ params, query, services }) => {
  const { database, clock } = services;
  const [tool, workshop] = await Promise.all([costingTool(database, params.id), readWorkshop(database)]);
  const table = new FigureTableBuilder({ withDerivations: query.working });
  const rates = workOutRates(tool, workshop, query.year ?? clock().getUTCFullYear(), table);
  return { rates, figures: table.table() };
});
