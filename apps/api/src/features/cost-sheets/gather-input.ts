import { type CostSheetInput, requireSized } from '@scantling/costing';
import type { Prisma } from '../../generated/prisma/client.ts';
import type { CostSheetAnswer } from './cost-sheet-records.ts';
import { toCostingMaterial } from './costing-materials.ts';
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
  const { drawing, unit: lengthUnit } = kept ?? (await records.drawing(sheet));
  const { variant = null, parameterValues = {} } = sheet;
  const { bill } = requireSized(drawing, { variant, values: parameterValues }, lengthUnit);
  const rows = await records.materials(bill);
  const offers = await records.offers(
    rows.map((row) => row.code),
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
    materials: rows.map((row) => toCostingMaterial(row, offers.get(row.code) ?? [])),
    suppliers: await records.suppliers([...offers.values()].flat(), onDate),
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
