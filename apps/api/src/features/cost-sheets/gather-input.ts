import { type CostSheetInput, requireSized } from '@scantling/costing';
import { isCurrency } from '@scantling/money';
import type { Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { offersFor } from '../price-lists/offers.ts';
import { supplierTerms } from '../price-lists/supplier-terms.ts';
import { shopRates } from '../workshop/shop-rates.ts';
import type { CostSheetAnswer } from './cost-sheet-records.ts';
import { materialRows, toCostingMaterial } from './costing-materials.ts';
import { type ChosenDrawing, chosenDrawing, type DesignChoice } from './design-choice.ts';

/**
 * Everything a cost sheet rests on, as it is now: bill, prices of its date, shop rates.
 * @param kept a drawing to cost instead of the one the design has now
 */
export async function gatherInput(
  database: Prisma.TransactionClient,
  sheet: DesignChoice & Pick<CostSheetAnswer, 'basis' | 'onDate' | 'quantities' | 'terms' | 'ownValues'>,
  today: string,
  kept?: ChosenDrawing,
): Promise<CostSheetInput> {
  const workshop = await database.workshop.findUnique({ where: { id: 1 }, select: { currency: true } });
  if (workshop === null || !isCurrency(workshop.currency)) {
    throw new RequestProblem('input-invalid', {
      errors: [
        {
          field: 'workshop',
          message: 'is not set up',
          mend: 'Enter the workshop, its currency and its rates first.',
        },
      ],
    });
  }
  const { currency } = workshop;
  const onDate = sheet.onDate ?? today;
  const { drawing, unit: lengthUnit } = kept ?? (await chosenDrawing(database, sheet));
  const { variant = null, parameterValues = {} } = sheet;
  const { bill } = requireSized(drawing, { variant, values: parameterValues }, lengthUnit);
  const rows = await materialRows(database, bill);
  const offers = await offersFor(
    database,
    rows.map((row) => row.code),
    onDate,
    currency,
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
    suppliers: await supplierTerms(database, [...offers.values()].flat(), onDate, currency),
    rates: await shopRates(database, today),
    terms: sheet.terms,
    ownValues: sheet.ownValues,
  };
}
