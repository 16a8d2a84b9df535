import { getToolSchedule, toWorkedSchedule } from '@scantling/contracts';
import { bookSchedule } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { handle } from '../../handle.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { costingTool } from './costing-tool.ts';

export const answerGetToolSchedule = handle(getToolSchedule, async ({ params, query, services }) => {
  const [tool, { currency }] = await Promise.all([
    costingTool(services.database, params.id),
    readWorkshop(services.database),
  ]);
  const table = new FigureTableBuilder({ withDerivations: query.working });
  return { schedule: toWorkedSchedule(bookSchedule(tool, { currency }), table), figures: table.table() };
});
