import type { Tool } from '@scantling/costing';
import type { Database } from '../../database/connect.ts';
import { notFound } from '../../problems/request-problem.ts';
import { readCostingTools } from '../../shop/costing-tools.ts';

/** One tool as costing takes it, with the machines that run along. @throws RequestProblem not-found */
export async function costingTool(database: Database, id: string): Promise<Tool> {
  const row = await database.tool.findUnique({ where: { id }, select: { code: true } });
  const tools = row === null ? [] : await readCostingTools(database);
  const tool = tools.find((one) => one.id === row?.code);
  if (tool === undefined) throw notFound('tool');
  return tool;
}
