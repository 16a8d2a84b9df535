import { toWorkedRate, type WorkedMachineHourRate, type Workshop } from '@scantling/contracts';
import { machineHourRate, RATE_BASES, type Tool } from '@scantling/costing';
import type { FigureTableBuilder } from '@scantling/figures';

/**
 * What an hour of a tool costs on every basis.
 * @param year of the books; a year before the tool came counts as its first
 * @throws CostingInputError
 */
export function workOutRates(
  tool: Tool,
  { currency, settings }: Pick<Workshop, 'currency' | 'settings'>,
  year: number,
  table: FigureTableBuilder,
  prefix = '',
): WorkedMachineHourRate[] {
  const options = {
    context: { currency },
    shop: settings,
    averageInvestment: settings.averageInvestment,
    namedYear: Math.max(year, ...firstYears(tool)),
  };
  return RATE_BASES.map((basis) =>
    toWorkedRate(machineHourRate(tool, basis, options), table, `${prefix}${basis}/`),
  );
}

/** The first years of a tool and of those that run along with it. */
function firstYears(tool: Tool): number[] {
  return [...(tool.firstYear === undefined ? [] : [tool.firstYear]), ...tool.attached.flatMap(firstYears)];
}
