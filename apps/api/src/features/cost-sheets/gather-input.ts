import type { CostSheetInput } from '@scantling/costing';
import type { Prisma } from '../../generated/prisma/client.ts';
import type { CostSheetAnswer } from './cost-sheet-records.ts';
import { CostingRecords } from './costing-records.ts';
import type { ChosenDrawing, DesignChoice } from './design-choice.ts';

type Asked = DesignChoice & Pick<CostSheetAnswer, 'basis' | 'onDate' | 'quantities' | 'terms' | 'ownValues'>;

/**
 * Everything a cost sheet rests on: bill, prices of its date, shop rates.
 * @param kept a drawing to cost instead of the one the design has now
 */
export async function gatherFrom(
  records: CostingRecords,
  sheet: Asked,
  kept?: ChosenDrawing,
): Promise<CostSheetInput> {
  const currency = await records.currency();
  const onDate = sheet.onDate ?? records.today;
  const chosen = kept ?? (await records.drawing(sheet));
  const { drawing, unit: lengthUnit } = chosen;
  const { variant = null, parameterValues = {} } = sheet;
  const { materials, suppliers } = await records.supplies(
    chosen,
    { variant, values: parameterValues },
    onDate,
  );
  return {
    currency,
    onDate,
    basis: sheet.basis,
    quantities: sheet.quantities,
    ...drawing,
    variant,
    parameterValues,
    lengthUnit,
    materials,
    suppliers,
    rates: await records.rates(),
    terms: sheet.terms,
    ownValues: sheet.ownValues,
  };
}

/** The same of one sheet, from the records as they are now. */
export function gatherInput(
  database: Prisma.TransactionClient,
  sheet: Asked,
  today: string,
): Promise<CostSheetInput> {
  return gatherFrom(new CostingRecords(database, today), sheet);
}
