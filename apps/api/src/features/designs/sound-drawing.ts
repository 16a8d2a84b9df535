import { checkCodes, checkDesign, type DrawnDesign, sizeDesign } from '@scantling/costing';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { lengthUnitOf } from './bill-file.ts';
import { knownCodes } from './known-codes.ts';

type Access = Database | Prisma.TransactionClient;

/** Every formula that cannot be worked out, as drawn or in a variant, and every code of what is not there. */
export async function problemsOf(database: Access, drawing: DrawnDesign, unitSystem: string) {
  return [
    ...checkCodes(drawing, await knownCodes(database)),
    ...checkDesign(drawing, lengthUnitOf(unitSystem)),
  ];
}

/** @throws RequestProblem input-invalid naming every field of the design that cannot be used */
export async function requireSoundDrawing(
  database: Access,
  drawing: DrawnDesign,
  unitSystem: string,
): Promise<void> {
  const errors = await problemsOf(database, drawing, unitSystem);
  if (errors.length > 0) throw new RequestProblem('input-invalid', { errors });
}

/**
 * A bare number of a formula is in the design's unit, so that another unit would silently make another piece of it.
 * @throws RequestProblem input-invalid
 */
export function requireSameUnit(drawing: DrawnDesign, before: string, after: string): void {
  if (before === after) return;
  const unit = lengthUnitOf(before);
  if (!sizeDesign(drawing, {}, unit).usesUnit) return;
  throw new RequestProblem('input-invalid', {
    errors: [
      {
        field: 'unitSystem',
        message: `cannot change while formulas hold lengths in ${unit} as bare numbers`,
        mend: `Write them as ${unit}(...) first, for example ${unit}(40).`,
      },
    ],
  });
}
