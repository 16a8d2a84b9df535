import { getToolRates, toWorkedRate } from '@scantling/contracts';
import { machineHourRate, RATE_BASES } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { handle } from '../../handle.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { costingTool } from './costing-tool.ts';

export const answerGetToolRates = handle(getToolRates, async ({ params, query, services }) => {
  const { database, clock } = services;
  const [tool, { currency, settings }] = await Promise.all([
    costingTool(database, params.id),
    readWorkshop(database),
  ]);
  const year = query.year ?? clock().getUTCFullYear();
  const options = {
    context: { currency },
    shop: settings,
    averageInvestment: settings.averageInvestment,
    namedYear: Math.max(year, ...firstYears(tool)),
  };
  const table = new FigureTableBuilder({ withDerivations: query.working });
  const rates = RATE_BASES.map((basis) =>
    toWorkedRate(machineHourRate(tool, basis, options), table, `${basis}/`),
  );
  return { rates, figures: table.table() };
});

/** The first years of a tool and of those that run along with it. */
function firstYears(tool: Awaited<ReturnType<typeof costingTool>>): number[] {
  return [...(tool.firstYear === undefined ? [] : [tool.firstYear]), ...tool.attached.flatMap(firstYears)];
}
