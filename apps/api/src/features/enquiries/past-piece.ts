import type { AnswerOf, getPastPiece } from '@scantling/contracts';
import { type CostSheet, costSheet } from '@scantling/costing';
import { type Decimal, sumOf } from '@scantling/decimals';
import type { Figure } from '@scantling/figures';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { findCostSheet } from '../cost-sheets/cost-sheet-records.ts';
import { gatherInput } from '../cost-sheets/gather-input.ts';
import { findDesign } from '../designs/design-records.ts';

/** Amounts travel with six places, as money is kept. */
const text = (value: Decimal) => value.toDecimalPlaces(6).toFixed();
const total = (figures: readonly Figure[]) => text(sumOf(figures.map(({ value }) => value)));

/** What is scaled from a cost that is too low is too low as well. @throws RequestProblem input-invalid */
function requireComplete(title: string, { isComplete, notices }: CostSheet): void {
  if (isComplete) return;
  const missing = notices.filter(({ kind }) => kind === 'no-price');
  throw fieldProblem(
    'id',
    `names "${title}", whose cost is too low: ${missing.map(({ message }) => message).join('; ')}`,
    `Choose another past piece, or mend this one first: ${missing[0]?.mend ?? 'enter the price'}.`,
  );
}

/**
 * A cost sheet worked out at one piece, as something to scale from.
 * @throws RequestProblem not-found, input-invalid where a material has no price; CostingInputError where the sheet itself cannot be worked out
 */
export async function readPastPiece(
  database: Prisma.TransactionClient,
  sheetId: string,
  today: string,
): Promise<AnswerOf<typeof getPastPiece>> {
  const sheet = await findCostSheet(database, sheetId);
  if (sheet === null) throw notFound('cost sheet');
  const input = await gatherInput(database, { ...sheet, quantities: [1] }, today);
  const worked = costSheet(input);
  requireComplete(sheet.title, worked);
  const [column] = worked.columns;
  if (column === undefined) throw fieldProblem('id', 'has nothing to scale', 'Choose another cost sheet.');
  const { classes, hours, work, price } = column;
  const { overallSize } = (await findDesign(database, sheet.designId)) ?? { overallSize: null };
  const { discount, policy, priceStep } = sheet.terms;
  return {
    piece: {
      id: sheet.id,
      name: sheet.title,
      ...(overallSize === null ? {} : { size: overallSize }),
      hours: text(hours.work.value),
      materials: total([classes.directMaterials, classes.consumables]),
      boughtIn: total([classes.boughtIn, classes.subcontract]),
      labour: text(classes.directLabour.value),
      machines: text(classes.machines.value),
      overhead: total([classes.workshopOverhead, classes.administrationOverhead]),
      other: total([classes.freight, classes.contingency]),
      ownerHours: text(hours.owner.value),
      ownerLabour: total(work.filter(({ isOwner }) => isOwner).map(({ labour }) => labour)),
      source: {
        kind: 'entered',
        text: `cost sheet "${sheet.title}" at one piece, prices of ${input.onDate}`,
        record: `cost-sheet:${sheet.id}`,
      },
    },
    currency: input.currency,
    onDate: input.onDate,
    priceThen: text(price.netPrice.value),
    terms: { discount, policy, ...(priceStep === undefined ? {} : { priceStep }) },
  };
}
