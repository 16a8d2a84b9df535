import { type Bill, type CostSheetInput, EMPTY_BILL } from '@scantling/costing';
import { isCurrency } from '@scantling/money';
import type { Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { findDesign } from '../designs/design-records.ts';
import { offersFor } from '../price-lists/offers.ts';
import { supplierTerms } from '../price-lists/supplier-terms.ts';
import { shopRates } from '../workshop/shop-rates.ts';
import type { CostSheetAnswer } from './cost-sheet-records.ts';
import { materialRows, toCostingMaterial } from './costing-materials.ts';

/**
 * Everything a cost sheet rests on, as it is now: bill, prices of its date, shop rates.
 * @param keptBill a bill to cost instead of the design's newest one
 */
export async function gatherInput(
  database: Prisma.TransactionClient,
  sheet: Pick<CostSheetAnswer, 'designId' | 'basis' | 'onDate' | 'quantities' | 'terms'>,
  today: string,
  keptBill?: Bill,
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
  const bill = keptBill ?? (await findDesign(database, sheet.designId))?.bill ?? EMPTY_BILL;
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
    bill,
    materials: rows.map((row) => toCostingMaterial(row, offers.get(row.code) ?? [])),
    suppliers: await supplierTerms(database, [...offers.values()].flat(), onDate, currency),
    rates: await shopRates(database, today),
    terms: sheet.terms,
  };
}
