import type { Workshop } from '@scantling/contracts';
import type { LabourGrade, Tool } from '@scantling/costing';
import type { Prisma } from '../generated/prisma/client.ts';
import { readCostingTools } from './costing-tools.ts';
import { readCostingGrades, readPaidHours } from './labour-grades.ts';
import { type LostEnquiries, lostEnquiries, readLostHours } from './lost-enquiries.ts';
import {
  type OverheadOfTheShop,
  overheadOfTheShop,
  readHomedAmounts,
  withLostEnquiries,
} from './overhead-pools.ts';
import { recoveredByRates } from './recovered-by-rates.ts';
import { readWorkshop } from './workshop-record.ts';

/** The shop's side of every cost sheet, as the records say today. */
export interface ShopToday {
  readonly workshop: Workshop;
  readonly grades: readonly LabourGrade[];
  /** Tools in use and tools that are gone, which old bills may still name. */
  readonly tools: readonly Tool[];
  readonly overhead: OverheadOfTheShop;
  /** Hours on lost enquiries of the last twelve months, wherever they come back; null where there are none. */
  readonly lostEnquiries: LostEnquiries | null;
}

/** Reads it all. @param today whose last twelve months count for lost enquiries. @throws RequestProblem not-found without a workshop; CostingInputError naming the field */
export async function readShop(database: Prisma.TransactionClient, today: string): Promise<ShopToday> {
  const [workshop, grades, tools, paidHours, amounts, lostHours] = await Promise.all([
    readWorkshop(database),
    readCostingGrades(database),
    readCostingTools(database),
    readPaidHours(database),
    readHomedAmounts(database),
    readLostHours(database, today),
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
  const lost = lostEnquiries(lostHours, grades, currency);
  const given =
    lost === null || settings.lostEnquiryHours === 'labour-rate'
      ? { amounts, recovered }
      : withLostEnquiries(amounts, recovered, lost.perYear);
  return {
    workshop,
    grades,
    tools,
    overhead: overheadOfTheShop(workshop, given.amounts, given.recovered),
    lostEnquiries: lost,
  };
}
