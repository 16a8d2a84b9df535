import type { Workshop } from '@scantling/contracts';
import type { LabourGrade, Tool } from '@scantling/costing';
import type { Prisma } from '../generated/prisma/client.ts';
import { readCostingTools } from './costing-tools.ts';
import { readCostingGrades, readPaidHours } from './labour-grades.ts';
import { type OverheadOfTheShop, overheadOfTheShop, readHomedAmounts } from './overhead-pools.ts';
import { recoveredByRates } from './recovered-by-rates.ts';
import { readWorkshop } from './workshop-record.ts';

/** The shop's side of every cost sheet, as the records say today. */
export interface ShopToday {
  readonly workshop: Workshop;
  readonly grades: readonly LabourGrade[];
  /** Tools in use and tools that are gone, which old bills may still name. */
  readonly tools: readonly Tool[];
  readonly overhead: OverheadOfTheShop;
}

/** Reads it all. @throws RequestProblem not-found without a workshop; CostingInputError naming the field */
export async function readShop(database: Prisma.TransactionClient): Promise<ShopToday> {
  const [workshop, grades, tools, paidHours, amounts] = await Promise.all([
    readWorkshop(database),
    readCostingGrades(database),
    readCostingTools(database),
    readPaidHours(database),
    readHomedAmounts(database),
  ]);
  const { settings, currency } = workshop;
  const recovered = recoveredByRates({
    currency,
    averageInvestment: settings.averageInvestment,
    shop: settings,
    tools: tools.filter((tool) => tool.disposal === undefined),
    grades,
    paidHours,
  });
  return { workshop, grades, tools, overhead: overheadOfTheShop(workshop, amounts, recovered) };
}
