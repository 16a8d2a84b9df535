import type { FieldProblem } from '@scantling/contracts';
import { toWhatIf, toWorkedCostSheet, type WorkedCostSheet, type WorkedWhatIf } from '@scantling/contracts';
import { costSheet, leafValueProblem } from '@scantling/costing';
import { type FigureTable, undatedKey } from '@scantling/figures';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';
import { findCostSheet } from '../cost-sheets/cost-sheet-records.ts';
import { gatherInput } from '../cost-sheets/gather-input.ts';

/** A cost sheet worked out today with every derivation. @throws RequestProblem not-found */
export async function workedSheet(
  database: Prisma.TransactionClient,
  id: string,
  today: string,
): Promise<WorkedCostSheet> {
  const sheet = await findCostSheet(database, id);
  if (sheet === null) throw notFound('cost sheet');
  return toWorkedCostSheet(costSheet(await gatherInput(database, sheet, today)), { withDerivations: true });
}

/** A leaf by its key, whatever day it is of. */
export function leafByKey(table: FigureTable, key: string) {
  const wanted = undatedKey(key);
  return (
    table[key] ??
    Object.values(table).find(({ id, source }) => source !== undefined && undatedKey(id) === wanted)
  );
}

/** Every value that cannot stand at its leaf; leaves that are gone are told in the answer. */
function problemsOf(table: FigureTable, changes: Readonly<Record<string, string>>): FieldProblem[] {
  return Object.entries(changes).flatMap(([key, value]) => {
    const leaf = leafByKey(table, key);
    const problem =
      leaf?.source === undefined ? null : leafValueProblem({ ...leaf, source: leaf.source }, value);
    return problem === null ? [] : [{ field: `changes.${key}`, ...problem }];
  });
}

/** @throws RequestProblem not-found, input-invalid; NoAnswerError where the values leave no answer */
export async function tryOnSheet(
  database: Prisma.TransactionClient,
  { id, changes, today }: { id: string; changes: Readonly<Record<string, string>>; today: string },
  options: { withDerivations: boolean },
): Promise<WorkedWhatIf> {
  const worked = await workedSheet(database, id, today);
  const errors = problemsOf(worked.figures, changes);
  if (errors.length > 0) throw new RequestProblem('input-invalid', { errors });
  return toWhatIf(worked, changes, options);
}
