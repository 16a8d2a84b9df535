import { listToolRates } from '@scantling/contracts';
import { FigureTableBuilder } from '@scantling/figures';
import { handle } from '../../handle.ts';
import { toCostingTools } from '../../shop/costing-tools.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { workOutRates } from './work-out-rates.ts';

export const answerListToolRates = handle(listToolRates, async ({ query, services }) => {
  const { database, clock } = services;
  const [rows, workshop] = await Promise.all([
    database.tool.findMany({ orderBy: { code: 'asc' } }),
    readWorkshop(database),
  ]);
  const year = query.year ?? clock().getUTCFullYear();
  const table = new FigureTableBuilder({ withDerivations: query.working });
  const ids = new Map(rows.map(({ id, code }) => [code, id]));
  const tools = toCostingTools(rows).map((tool) => ({
    id: ids.get(tool.id) ?? '',
    code: tool.id,
    name: tool.name,
    rates: workOutRates(tool, workshop, year, table, `${tool.id}/`),
  }));
  return { tools, figures: table.table() };
});
