import type { ToolInput } from '@scantling/contracts';
import { bookSchedule, CostingInputError, machineHourRate } from '@scantling/costing';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem, type RequestProblem } from '../../problems/request-problem.ts';
import { readCostingTools } from '../../shop/costing-tools.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';

// What costing calls a part of a tool, and the field of the record it comes from.
const RECORD_FIELDS: readonly (readonly [string, string])[] = [
  ['hire', 'hirePerHour'],
  ['disposal', 'soldOn'],
  ['firstYear', 'acquiredOn'],
  ['depreciation.lifeUnits', 'lifeHours'],
];

function inTheRecord(error: CostingInputError): RequestProblem {
  const known = RECORD_FIELDS.find(([field]) => error.field.startsWith(field));
  return fieldProblem(known?.[1] ?? error.field, error.reason, `${error.mend}.`);
}

/** What dates and prices must be to each other. @throws RequestProblem input-invalid */
export function checkGiven(given: ToolInput): void {
  if (given.soldOn !== null && given.soldOn < given.acquiredOn)
    throw fieldProblem('soldOn', 'is before the tool came', 'Give a later date.');
  if (given.soldOn === null && given.soldFor !== null)
    throw fieldProblem('soldOn', 'is missing for a tool that fetched something', 'Say when it was sold.');
  if ((given.acquisition === 'hired') !== (given.hirePerHour !== null))
    throw fieldProblem(
      'hirePerHour',
      given.acquisition === 'hired' ? 'is missing for a hired tool' : 'is given for a tool that is not hired',
      given.acquisition === 'hired' ? 'Enter the hire by the hour.' : 'Leave it out (null).',
    );
}

/**
 * Works a tool's rate and schedule out as it now stands in the records, so that no tool is kept that no cost sheet
 * could use. @throws RequestProblem input-invalid naming the record's field
 */
export async function checkWorksOut(database: Prisma.TransactionClient, code: string): Promise<void> {
  const { currency, settings } = await readWorkshop(database);
  const context = { currency };
  try {
    const tool = (await readCostingTools(database)).find((one) => one.id === code);
    if (tool === undefined) return;
    machineHourRate(tool, 'replacement', { context, shop: settings });
    if (tool.acquisition !== 'hired') bookSchedule(tool, context);
  } catch (error) {
    if (error instanceof CostingInputError) throw inTheRecord(error);
    throw error;
  }
}
