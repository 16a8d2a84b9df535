import { type ToolRegister, toolRegister } from '@scantling/costing';
import type { Currency } from '@scantling/money';
import type { Database } from '../../database/connect.ts';
import { readCostingTools } from '../../shop/costing-tools.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';

/** The register of one calendar year from the tool records. @throws CostingInputError */
export async function readRegister(
  database: Database,
  year: number,
): Promise<{ register: ToolRegister; currency: Currency; workshopName: string }> {
  const [tools, { currency, name }] = await Promise.all([readCostingTools(database), readWorkshop(database)]);
  return { register: toolRegister(tools, year, { currency }), currency, workshopName: name };
}
