import type { ShopRates } from '@scantling/costing';
import type { Prisma } from '../../generated/prisma/client.ts';
import { readShop } from '../../shop/read-shop.ts';

/**
 * What a cost sheet takes of the shop: grades and machines by code, pools net of what rates recover, allowances.
 * @throws RequestProblem not-found without a workshop; CostingInputError naming what cannot be used
 */
export async function shopRates(database: Prisma.TransactionClient, today: string): Promise<ShopRates> {
  const { workshop, grades, tools, overhead } = await readShop(database, today);
  const { floorCostPerM2, electricityPerKwh, priceAgeDays, kerf, resawKerf, resawCleanUp, forms } =
    workshop.settings;
  return {
    grades,
    machines: tools,
    shop: { floorCostPerM2, electricityPerKwh },
    averageInvestment: workshop.settings.averageInvestment,
    workshopOverhead: overhead.workshop,
    administrationOverhead: overhead.administration,
    defaults: forms,
    priceAgeDays,
    kerf,
    resawKerf,
    resawCleanUp,
  };
}
