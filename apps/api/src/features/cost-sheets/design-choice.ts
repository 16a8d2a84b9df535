import type { FieldProblem } from '@scantling/contracts';
import { type DrawnDesign, sizeDesign } from '@scantling/costing';
import type { LengthUnit } from '@scantling/units';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { lengthUnitOf } from '../designs/bill-file.ts';
import { findRevision } from '../designs/design-records.ts';

type Access = Prisma.TransactionClient;

/** Which form of a design a sheet is for; what is left out is as drawn, at the newest revision. */
export interface DesignChoice {
  readonly designId: string;
  readonly revision?: number | null;
  readonly variant?: string | null;
  readonly parameterValues?: Readonly<Record<string, string>>;
}

/** A drawing, and what bare numbers of its formulas are in. */
export interface ChosenDrawing {
  readonly drawing: DrawnDesign;
  readonly unit: LengthUnit;
}

/** The drawing a choice is made from. @throws RequestProblem input-invalid where the design has no such revision */
export async function chosenDrawing(
  database: Access,
  { designId, revision = null }: DesignChoice,
): Promise<ChosenDrawing> {
  const found = await findRevision(database, designId, revision);
  if (found !== null) return { drawing: found.drawing, unit: lengthUnitOf(found.unitSystem) };
  throw fieldProblem(
    'revision',
    `is ${revision ?? 'the newest'}, which this design does not have`,
    'Choose one of its revisions, or follow the newest.',
  );
}

/** What is wrong with the choice itself; a problem of the design is told when the sheet is worked out. */
export async function choiceProblems(database: Access, choice: DesignChoice): Promise<FieldProblem[]> {
  const { drawing, unit } = await chosenDrawing(database, choice);
  const { problems } = sizeDesign(
    drawing,
    { variant: choice.variant ?? null, values: choice.parameterValues ?? {} },
    unit,
  );
  return problems.filter(({ field }) => field === 'variant' || field.startsWith('parameterValues'));
}
